/** The command that prints a page of a scenario as PDF, without the process around it. */
import { accessSync, constants, statSync, writeFileSync } from "node:fs";
import { dirname } from "node:path";
import { printPage } from "./print-page.ts";
import { printRequest } from "./print-request.ts";
import { readSheetArguments, sheetHelp } from "./sheet-arguments.ts";

export interface SheetOutput {
  /** 2: the arguments or the file are wrong; 1: it cannot be printed here. */
  readonly code: 0 | 1 | 2;
  readonly stdout: string;
  readonly stderr: string;
}

/** Runs the command. With any problem nothing is written. */
export async function sheetCommand(args: readonly string[]): Promise<SheetOutput> {
  const read = readSheetArguments(args);
  if (read === "help") return { code: 0, stdout: sheetHelp, stderr: "" };
  if ("ok" in read) return failed(2, [read.sentence]);
  const unwritable = whyUnwritable(read.output);
  if (unwritable !== undefined) return failed(2, [unwritable]);
  const wanted = printRequest(read);
  if (!wanted.ok) return failed(2, wanted.sentences);
  try {
    writeFileSync(read.output, await printPage(wanted.request));
  } catch (error) {
    return failed(1, [`It could not be printed: ${error instanceof Error ? error.message : String(error)}`]);
  }
  return { code: 0, stdout: `The page is in ${read.output}.\n`, stderr: "" };
}

/** Asked before the weekend is played: who mistyped a folder does not wait for it. */
function whyUnwritable(output: string): string | undefined {
  const folder = dirname(output);
  try {
    accessSync(folder, constants.W_OK);
  } catch {
    return `The folder "${folder}" is not there or cannot be written; -o names a file in a folder that can.`;
  }
  const isFolder = statSync(output, { throwIfNoEntry: false })?.isDirectory() ?? false;
  return isFolder ? `"${output}" is a folder; -o names a file, for example ${output}/sheet.pdf.` : undefined;
}

function failed(code: 1 | 2, sentences: readonly string[]): SheetOutput {
  return { code, stdout: "", stderr: `${sentences.join("\n")}\n` };
}
