/**
 * One frame of a code sequence: the bytes of one QR code. Numbers are unsigned, the highest byte first.
 *
 * | bytes | what |
 * | --- | --- |
 * | 2 | mark |
 * | 1 | version |
 * | 1 | kind of content |
 * | 8 | session: the first bytes of the content's SHA-256 |
 * | 2 | blocks that the content was cut into |
 * | 4 | bytes of the content |
 * | 4 | number of the frame, which says the blocks that are mixed in it (fountain.ts) |
 * | … | payload, as long as one block |
 * | 4 | the first bytes of the SHA-256 of all that precedes |
 *
 * A QR code has an error correction of its own; the checksum drops the rare misreading that passes it. Mark and
 * checksum stay where they are in later versions, so that a newer code is told from a damaged one.
 */
import { digest } from "lib0/hash/sha256";

export const codeVersion = 1;

/** What the content of a sequence is: what a device has, the answer to that, or a whole hand-off file. */
export const codeKinds = ["holdings", "answer", "file"] as const;
export type CodeKind = (typeof codeKinds)[number];

export interface CodeFrame {
  readonly kind: CodeKind;
  /** Eight bytes. */
  readonly session: Uint8Array;
  /** 1 to {@link allowedBlocks}. */
  readonly blocks: number;
  /** Bytes of the content, 1 to {@link allowedContentBytes}. */
  readonly length: number;
  /** 0 to 2^32 - 1. */
  readonly number: number;
  readonly payload: Uint8Array;
}

/**
 * Bytes that one code carries: QR version 15 (77 modules a side) at level M holds 412 (ISO/IEC 18004, table 7).
 *
 * Why that size: at a hand's distance of 25 cm a laptop's camera of 1280 pixels over 35 cm sees a code 6.6 cm wide (a
 * phone's screen) in 240 pixels, with its quiet zone 2.8 a module; in tests the reader needs about 2. A larger version
 * would leave no reserve for a hand that shakes. Level M, since the codes are read from glass that mirrors: what lies
 * under a reflection is repaired, up to 15 %.
 */
export const frameBytes = 412;
export const largestQrVersion = 15;

const MARK = [0xb5, 0x71] as const;
const HEADER = 22;
const CHECKSUM = 4;
const SESSION = 8;

/** Bytes of content in one frame. */
export const payloadBytes = frameBytes - HEADER - CHECKSUM;
/** More blocks than these take more than three and a half minutes at five codes a second: a file is quicker then. */
export const allowedBlocks = 1024;
export const allowedContentBytes = allowedBlocks * payloadBytes;

export function writeFrame({ kind, session, blocks, length, number, payload }: CodeFrame): Uint8Array {
  const bytes = new Uint8Array(HEADER + payload.length + CHECKSUM);
  const view = new DataView(bytes.buffer);
  bytes.set([...MARK, codeVersion, codeKinds.indexOf(kind)]);
  bytes.set(session, 4);
  view.setUint16(12, blocks);
  view.setUint32(14, length);
  view.setUint32(18, number);
  bytes.set(payload, HEADER);
  bytes.set(checksumOf(bytes), HEADER + payload.length);
  return bytes;
}

export type FrameReading =
  | { readonly ok: true; readonly frame: CodeFrame }
  | { readonly ok: false; readonly type: "foreign" | "newer version" | "damaged" };

/** Reads the bytes of a QR code, whatever they are. Never throws. */
export function readFrame(bytes: Uint8Array): FrameReading {
  if (bytes[0] !== MARK[0] || bytes[1] !== MARK[1]) return { ok: false, type: "foreign" };
  const end = bytes.length - CHECKSUM;
  if (end < 3 || !checksumOf(bytes).every((byte, index) => byte === bytes[end + index])) {
    return { ok: false, type: "damaged" };
  }
  if ((bytes[2] ?? 0) > codeVersion) return { ok: false, type: "newer version" };
  const kind = codeKinds[bytes[3] ?? -1];
  if (end <= HEADER || kind === undefined) return { ok: false, type: "damaged" };
  const view = new DataView(bytes.buffer, bytes.byteOffset, bytes.length);
  const frame = {
    kind,
    session: bytes.slice(4, 4 + SESSION),
    blocks: view.getUint16(12),
    length: view.getUint32(14),
    number: view.getUint32(18),
    payload: bytes.slice(HEADER, end),
  };
  return isPossible(frame) ? { ok: true, frame } : { ok: false, type: "damaged" };
}

/** The session of a content: what a receiver checks the whole by. */
export function sessionOf(content: Uint8Array): Uint8Array {
  return digest(content).slice(0, SESSION);
}

/** The content fills its blocks: all but the last to their end. */
function isPossible({ blocks, length, payload }: CodeFrame): boolean {
  return (
    blocks >= 1 &&
    blocks <= allowedBlocks &&
    payload.length <= payloadBytes &&
    length > (blocks - 1) * payload.length &&
    length <= blocks * payload.length
  );
}

/** Over all bytes but the last four. */
function checksumOf(bytes: Uint8Array): Uint8Array {
  return digest(bytes.subarray(0, bytes.length - CHECKSUM)).slice(0, CHECKSUM);
}
