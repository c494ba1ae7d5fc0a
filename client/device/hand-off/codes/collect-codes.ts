/** The receiving side of a code sequence: frames as the camera reads them, in any order, until the content is whole. */

import { bytesEqual } from "#client/device/bytes-equal.ts";
import { type CodeFrame, type CodeKind, type FrameReading, readFrame, sessionOf } from "./code-frame.ts";
import { type BlockGathering, blocksOfFrame, gatherBlocks } from "./fountain.ts";

export type CodeOutcome =
  /** The code belongs to the sequence. */
  | { readonly type: "read" }
  | { readonly type: "done"; readonly kind: CodeKind; readonly content: Uint8Array }
  /** The code changes nothing; why, in a sentence. */
  | { readonly type: "left out"; readonly sentence: string };

export interface CodeCollection {
  /** Takes the bytes of one QR code, whatever they are. Never throws. */
  add(bytes: Uint8Array): CodeOutcome;
  /** Codes that brought something, and how many of them are needed; undefined before the first. */
  progress(): { readonly read: number; readonly needed: number } | undefined;
}

/** Collects the first sequence of one of these kinds that it sees; codes of another one are left out. */
export function collectCodes(wanted: readonly CodeKind[]): CodeCollection {
  let sequence: { readonly first: CodeFrame; readonly gathering: BlockGathering } | undefined;
  const add = (bytes: Uint8Array): CodeOutcome => {
    const reading = readFrame(bytes);
    if (!reading.ok) return leaveOut(unreadable[reading.type]);
    const { frame } = reading;
    if (!wanted.includes(frame.kind)) return leaveOut(unwanted[frame.kind]);
    sequence ??= { first: frame, gathering: gatherBlocks(frame.blocks, frame.payload.length) };
    const { first, gathering } = sequence;
    if (!isOfSameSequence(frame, first)) return leaveOut(another);
    gathering.add(blocksOfFrame(first.session, frame.number, first.blocks), frame.payload);
    const content = gathering.joined()?.slice(0, first.length);
    if (content === undefined) return { type: "read" };
    sequence = undefined;
    if (!bytesEqual(sessionOf(content), first.session)) {
      return leaveOut("The codes do not fit together. Reading starts again from the first.");
    }
    return { type: "done", kind: first.kind, content };
  };
  return {
    add,
    progress: () => sequence && { read: sequence.gathering.known(), needed: sequence.first.blocks },
  };
}

const another =
  "This code belongs to another hand-off than the first one read; it is left out. To read this one, stop the camera and start it again.";

const unreadable: Readonly<Record<Extract<FrameReading, { ok: false }>["type"], string>> = {
  foreign: "This code is not one of Pitslate's hand-off.",
  damaged: "This code was not read cleanly; it is left out.",
  "newer version":
    "This code was made by a newer version of Pitslate. Bring this device to that version first, then read it.",
};

const unwanted: Readonly<Record<CodeKind, string>> = {
  holdings: "This code says what the other device has. The other device has to show its answer instead.",
  answer: "This code is an answer. The other device has to show what it has instead.",
  file: "This code is of all that the other device has. The other device has to show what it has instead.",
};

function isOfSameSequence(frame: CodeFrame, first: CodeFrame): boolean {
  return (
    bytesEqual(frame.session, first.session) &&
    frame.kind === first.kind &&
    frame.blocks === first.blocks &&
    frame.length === first.length &&
    frame.payload.length === first.payload.length
  );
}

function leaveOut(sentence: string): CodeOutcome {
  return { type: "left out", sentence };
}
