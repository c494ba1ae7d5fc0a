import { readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { type ParsedScenario, parseScenario } from "./parse-scenario.ts";

/** Reads a scenario's file; a team that it names is looked for beside it, and nowhere else. */
export function loadScenario(file: string): ParsedScenario {
  const text = readText(file);
  if (text === undefined) return { ok: false, problems: [`The scenario's file "${file}" cannot be read.`] };
  return parseScenario(text, (name) =>
    /^[A-Za-z0-9._-]+$/.test(name) ? readText(join(dirname(file), name)) : undefined,
  );
}

function readText(file: string): string | undefined {
  try {
    return readFileSync(file, "utf8");
  } catch {
    return undefined;
  }
}
