/** A chosen file as text. */

export type TextFile =
  | { readonly ok: true; readonly text: string }
  | { readonly ok: false; readonly problem: "unreadable" | "not UTF-8" };

/** Reads UTF-8. What is not UTF-8 is refused, since names would be spoilt. The caller looks at its size first. */
export async function readTextFile(file: Blob): Promise<TextFile> {
  let bytes: ArrayBuffer;
  try {
    bytes = await file.arrayBuffer();
  } catch {
    return { ok: false, problem: "unreadable" };
  }
  try {
    return { ok: true, text: new TextDecoder("utf-8", { fatal: true }).decode(bytes) };
  } catch {
    return { ok: false, problem: "not UTF-8" };
  }
}
