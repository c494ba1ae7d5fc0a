/** The receiving side of a code sequence: frames as the camera reads them, in any order, until the content is whole. */

import { bytesEqual } from "#client/device/bytes-equal.ts";
import { type CodeFrame, type CodeKind, type FrameReading, readFrame, sessionOf } from "./code-frame.ts";
import { type BlockGathering, blocksOfFrame, gatherBlocks } from "./fountain.ts";

export type CodeOutcome =
  /** The code belongs to the sequence. */
  | { readonly type: "read" }
  | { readonly type: "done"; readonly kind: CodeKind; readonly content: Uint8Array }
  /** The code changes nothing, and why. */
  | { readonly type: "left out"; readonly problem: CodeProblem };

export type CodeProblem =
  | { readonly type: "unreadable"; readonly as: Extract<FrameReading, { ok: false }>["type"] }
  /** Of a kind that is not wanted now. */
  | { readonly type: "unwanted"; readonly kind: CodeKind }
  /** Of another sequence than the first one read. */
  | { readonly type: "another hand-off" }
  /** The whole is not what the codes told of it; reading starts again. */
  | { readonly type: "no fit" };

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
    if (!reading.ok) return leaveOut({ type: "unreadable", as: reading.type });
    const { frame } = reading;
    if (!wanted.includes(frame.kind)) return leaveOut({ type: "unwanted", kind: frame.kind });
    sequence ??= { first: frame, gathering: gatherBlocks(frame.blocks, frame.payload.length) };
    const { first, gathering } = sequence;
    if (!isOfSameSequence(frame, first)) return leaveOut({ type: "another hand-off" });
    gathering.add(blocksOfFrame(first.session, frame.number, first.blocks), frame.payload);
    const content = gathering.joined()?.slice(0, first.length);
    if (content === undefined) return { type: "read" };
    sequence = undefined;
    if (!bytesEqual(sessionOf(content), first.session)) {
      return leaveOut({ type: "no fit" });
    }
    return { type: "done", kind: first.kind, content };
  };
  return {
    add,
    progress: () => sequence && { read: sequence.gathering.known(), needed: sequence.first.blocks },
  };
}

function isOfSameSequence(frame: CodeFrame, first: CodeFrame): boolean {
  return (
    bytesEqual(frame.session, first.session) &&
    frame.kind === first.kind &&
    frame.blocks === first.blocks &&
    frame.length === first.length &&
    frame.payload.length === first.payload.length
  );
}

function leaveOut(problem: CodeProblem): CodeOutcome {
  return { type: "left out", problem };
}
