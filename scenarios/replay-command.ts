/** The command that replays a scenario, without the process around it. */
import { parseArgs } from "node:util";
import { loadScenario } from "./gate/load-scenario.ts";
import { playScenario } from "./player/play-scenario.ts";
import { reportOn } from "./report/report.ts";
import { reportText } from "./report/report-text.ts";

/** What the command prints, and where. */
export interface CommandOutput {
  readonly code: 0 | 1 | 2;
  readonly stdout: string;
  readonly stderr: string;
}

export const replayHelp = `Plays a race weekend on simulated devices and prints what came of it.

Usage: npm run replay -- <file> [options]

Options
  --json            print structured JSON instead of text
  --seed <number>   seed of record ids and of the order of delivery, 1 to 4294967295 (default: the scenario's)
  --help            this text
`;

/** Runs the command. Code 2: the arguments or the file are wrong; 1: a step of the scenario cannot be done. */
export function replayCommand(args: readonly string[]): CommandOutput {
  const read = readArguments(args);
  if (typeof read === "string") return failed(2, [read]);
  if (read.help) return { code: 0, stdout: replayHelp, stderr: "" };
  const parsed = loadScenario(read.file);
  if (!parsed.ok) return failed(2, parsed.problems);
  const result = playScenario(parsed.scenario, read.seed);
  if (!result.ok) return failed(1, [result.sentence]);
  const report = reportOn(result.played);
  result.played.close();
  return { code: 0, stdout: read.json ? `${JSON.stringify(report, null, 2)}\n` : reportText(report), stderr: "" };
}

interface Arguments {
  readonly file: string;
  readonly json: boolean;
  readonly help: boolean;
  readonly seed: number | undefined;
}

function readArguments(args: readonly string[]): Arguments | string {
  try {
    const { values, positionals } = parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        json: { type: "boolean", default: false },
        seed: { type: "string" },
        help: { type: "boolean", default: false },
      },
    });
    const [file, ...more] = positionals;
    const { json, help, seed } = values;
    if (help) return { file: "", json, help, seed: undefined };
    if (file === undefined || more.length > 0) return "Name one scenario file; --help lists the options.";
    if (seed === undefined) return { file, json, help, seed };
    const isSeed = /^[1-9]\d{0,9}$/.test(seed) && Number(seed) <= 0xffff_ffff;
    return isSeed
      ? { file, json, help, seed: Number(seed) }
      : `--seed is "${seed}"; it must be a whole number from 1 to 4294967295.`;
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return `${reason.split("\n", 1)[0]}; --help lists the options.`;
  }
}

function failed(code: 1 | 2, sentences: readonly string[]): CommandOutput {
  return { code, stdout: "", stderr: `${sentences.join("\n")}\n` };
}
