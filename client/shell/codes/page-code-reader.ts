/** The page's one reader of codes. Its wasm is a file of our own build, and in the program's copy for offline starts. */
import wasm from "zxing-wasm/reader/zxing_reader.wasm?url";
import { type CodeReader, createCodeReader } from "#client/device/hand-off/codes/read-code.ts";

let reader: Promise<CodeReader> | undefined;

/** Loads the reader at the first call; after a failure the next call tries again. */
export async function pageCodeReader(): Promise<CodeReader> {
  reader ??= createCodeReader({ url: wasm });
  try {
    return await reader;
  } catch (error) {
    reader = undefined;
    throw error;
  }
}
