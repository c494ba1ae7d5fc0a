/** A chosen file as text. */
import { data } from "#client/text/data.ts";

/** Largest file, bytes: what five seasons of a large team take, and what a phone can hold twice. */
export const largestFile = 32 * 1024 * 1024;

export type ReadFile =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: { readonly type: string; readonly sentence: string } };

/** Reads UTF-8. What is larger than allowed is not opened; what is not UTF-8 is refused, since names would be spoilt. */
export async function readFile(file: File): Promise<ReadFile> {
  if (file.size > largestFile) return refusal("too large", data.file.tooLarge(file.size, largestFile));
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return refusal("unreadable", data.file.unreadable);
  }
  try {
    return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    return refusal("not UTF-8", data.file.notText);
  }
}

function refusal(type: string, sentence: string): ReadFile {
  return { ok: false, problem: { type, sentence } };
}
