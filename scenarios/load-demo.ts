/** Puts the demo team into an empty data folder: `tsx scenarios/load-demo.ts --data <folder>`. */
import { parseArgs } from "node:util";
import { ulid } from "ulid";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { StoreProblem } from "#server/store/store-problem.ts";
import { loadDemo } from "./demo-updates.ts";

const help = `Puts the invented demo team and its two weekends into a data folder that is empty.

Options
  --data <folder>   folder of the server's log (default ./data)
  --help            this text
`;

function main(): void {
  const options = read(process.argv.slice(2));
  if (typeof options === "string") fail(options, 2);
  else if (options.help) process.stdout.write(help);
  else load(options.data);
}

function load(folder: string): void {
  try {
    process.stdout.write(`${loadInto(folder)}\n`);
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
    fail(error.message, 1);
  }
}

function loadInto(folder: string): string {
  const store = openSqliteStore(folder);
  try {
    return loadDemo(store, { newId: () => ulid(), now: () => new Date().toISOString() })
      ? `The demo team and its two weekends are in the data folder ${folder}.`
      : `The data folder ${folder} has records already: nothing was changed.`;
  } finally {
    store.close();
  }
}

function read(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      options: { data: { type: "string", default: "./data" }, help: { type: "boolean", default: false } },
    }).values;
  } catch (error) {
    return `${error instanceof Error ? error.message : String(error)}; --help lists the options.`;
  }
}

function fail(sentence: string, code: number): void {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = code;
}

main();
