/** A content as codes: as many frames as anybody may want to see. */
import { allowedContentBytes, type CodeKind, payloadBytes, sessionOf, writeFrame } from "./code-frame.ts";
import { blocksOfFrame, includes, mix } from "./fountain.ts";

export interface CodeSequence {
  readonly kind: CodeKind;
  /** Frames that suffice when none is missed; with one, a single code is all there is. */
  readonly blocks: number;
  /** The bytes of frame `number`, 0 to 2^32 - 1; one QR code holds them. */
  frame(number: number): Uint8Array;
}

export type MadeSequence =
  | { readonly ok: true; readonly sequence: CodeSequence }
  | { readonly ok: false; readonly problem: { readonly type: "too large" } };

/** Cuts a content (1 byte or more) into blocks of equal length; refused when it is larger than codes are good for. */
export function createCodeSequence(kind: CodeKind, content: Uint8Array): MadeSequence {
  if (content.length === 0) throw new Error("There is nothing to show as a code.");
  if (content.length > allowedContentBytes) {
    return { ok: false, problem: { type: "too large" } };
  }
  const blocks = Math.ceil(content.length / payloadBytes);
  const size = Math.ceil(content.length / blocks);
  const session = sessionOf(content);
  const padded = new Uint8Array(blocks * size);
  padded.set(content);
  const frame = (number: number): Uint8Array => {
    const payload = new Uint8Array(size);
    const set = blocksOfFrame(session, number, blocks);
    for (let block = 0; block < blocks; block++) {
      if (includes(set, block)) mix(payload, padded.subarray(block * size, (block + 1) * size));
    }
    return writeFrame({ kind, session, blocks, length: content.length, number, payload });
  };
  return { ok: true, sequence: { kind, blocks, frame } };
}
