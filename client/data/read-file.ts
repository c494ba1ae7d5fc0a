/** A chosen file as text. */
import { data } from "#client/text/data.ts";
import { readTextFile } from "#client/widgets/read-text-file.ts";

/** Largest file, bytes: what five seasons of a large team take, and what a phone can hold twice. */
export const largestFile = 32 * 1024 * 1024;

export type ReadFile =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: { readonly type: string; readonly sentence: string } };

/** Reads it as UTF-8. What is larger than allowed is not opened. */
export async function readFile(file: File): Promise<ReadFile> {
  if (file.size > largestFile) return refusal("too large", data.file.tooLarge(file.size, largestFile));
  const read = await readTextFile(file);
  if (read.ok) return read;
  return refusal(read.problem, read.problem === "unreadable" ? data.file.unreadable : data.file.notText);
}

function refusal(type: string, sentence: string): ReadFile {
  return { ok: false, problem: { type, sentence } };
}
