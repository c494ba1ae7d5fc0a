import { parseArgs } from "node:util";
import { reasonOf } from "./logging.ts";
import type { LogContent } from "./store/log-file.ts";
import { StoreProblem } from "./store/store-problem.ts";

/** A command that copies a log between a file and a data folder. */
export type CopyCommand = {
  readonly help: string;
  /** Undefined when the folder has to be named. */
  readonly defaultFolder: string | undefined;
  /** @throws StoreProblem with a sentence for the person who gave the command. */
  readonly copy: (file: string, folder: string) => LogContent;
  /** What has been done, as the beginning of a sentence. */
  readonly done: string;
};

export type ParsedCopyCommand =
  | { readonly state: "run"; readonly file: string; readonly folder: string }
  | { readonly state: "help" }
  | { readonly state: "refused"; readonly sentence: string };

/** Does the command; the process leaves with 0 when it is done, 1 when it cannot be, and 2 when it is not understood. */
export function runCopyCommand(command: CopyCommand, args: readonly string[]): void {
  const parsed = parseCopyCommand(args, command.defaultFolder);
  if (parsed.state === "help") {
    process.stdout.write(command.help);
  } else if (parsed.state === "refused") {
    process.stderr.write(`${parsed.sentence}\n`);
    process.exitCode = 2;
  } else {
    copy(command, parsed.file, parsed.folder);
  }
}

/** Reads a command line with one file and `--data`; each mistake gives one sentence. */
export function parseCopyCommand(args: readonly string[], defaultFolder: string | undefined): ParsedCopyCommand {
  const read = readArguments(args);
  if (typeof read === "string") return { state: "refused", sentence: read };
  const { values, positionals } = read;
  if (values.help) return { state: "help" };
  const [file, ...more] = positionals;
  if (file === undefined || file === "" || more.length > 0) {
    return { state: "refused", sentence: "Name one file; --help tells how." };
  }
  const folder = values.data ?? defaultFolder;
  if (folder === undefined) return { state: "refused", sentence: "Name the data folder with --data." };
  if (folder === "") return { state: "refused", sentence: "--data is empty; it must name a folder." };
  return { state: "run", file, folder };
}

function copy(command: CopyCommand, file: string, folder: string): void {
  try {
    const { documents, snapshots, updates, bytes } = command.copy(file, folder);
    const content = `documents ${documents}, snapshots ${snapshots}, updates ${updates}, bytes ${bytes}`;
    process.stdout.write(`${command.done}: ${content}.\n`);
  } catch (error) {
    if (!(error instanceof StoreProblem)) throw error;
    process.stderr.write(`${error.message}\n`);
    process.exitCode = 1;
  }
}

function readArguments(args: readonly string[]) {
  try {
    return parseArgs({
      args: [...args],
      allowPositionals: true,
      options: { data: { type: "string" }, help: { type: "boolean", default: false } },
    });
  } catch (error) {
    // parseArgs explains at length after its first sentence.
    const [sentence] = reasonOf(error).split(/\.\s|\n/, 1);
    return `${sentence?.replace(/\.$/, "")}; --help lists the options.`;
  }
}
