/** Puts a team and its weekends into an empty data folder: `npm run load -- [file …] --data <folder>`. */
import { parseArgs } from "node:util";
import { ulid } from "ulid";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { StoreProblem } from "#server/store/store-problem.ts";
import { demoFiles, type LoadResult, loadTeam } from "./starting-records.ts";

const help = `Puts a team and its weekends into a data folder that is empty.

Usage: npm run load -- [file ...] [options]

Files are scenarios, all of the same team; what they hold before their first step is loaded.
Without a file it is the invented demo team with its two weekends.

Options
  --data <folder>     folder of the server's log (default ./data)
  --first-day <day>   moves the weekends so that the first begins on that day, like 2026-06-12
  --help              this text
`;

function main(): void {
  const read = readArguments(process.argv.slice(2));
  if (typeof read === "string") fail([read], 2);
  else if (read.values.help) process.stdout.write(help);
  else load(read.positionals.length > 0 ? read.positionals : demoFiles, read.values.data, read.values["first-day"]);
}

function load(files: readonly string[], folder: string, firstDay: string | undefined): void {
  if (firstDay !== undefined && !isDay(firstDay)) {
    fail([`--first-day is "${firstDay}"; it has to be a day, like 2026-06-12. Nothing was written.`], 2);
    return;
  }
  try {
    const result = loadInto(files, folder, firstDay);
    if (result.ok) {
      const what = `The team (${result.team} riders) and its weekends (${result.weekends.join(", ")})`;
      process.stdout.write(`${what} are in the data folder ${folder}.\n`);
    } else fail([...result.problems, "Nothing was written."], 1);
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
    fail([error.message], 1);
  }
}

function loadInto(files: readonly string[], folder: string, firstDay: string | undefined): LoadResult {
  const store = openSqliteStore(folder);
  try {
    return loadTeam(store, files, {
      newId: () => ulid(),
      now: () => new Date().toISOString(),
      ...(firstDay !== undefined && { firstDay }),
    });
  } finally {
    store.close();
  }
}

function isDay(text: string): boolean {
  const moment = Date.parse(text);
  return /^\d{4}-\d{2}-\d{2}$/.test(text) && !Number.isNaN(moment) && new Date(moment).toISOString().startsWith(text);
}

function readArguments(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: {
        data: { type: "string", default: "./data" },
        "first-day": { type: "string" },
        help: { type: "boolean", default: false },
      },
    });
  } catch (error) {
    return `${error instanceof Error ? error.message : String(error)}; --help lists the options.`;
  }
}

function fail(sentences: readonly string[], code: number): void {
  process.stderr.write(`${sentences.join("\n")}\n`);
  process.exitCode = code;
}

main();
