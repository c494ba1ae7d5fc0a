/**
 * WebSocket frames (RFC 6455, section 5.2) with as little work as there can be: a library's socket costs the load ten times
 * what the servers' answers are worth, and then it is the load that is measured.
 */

export const opcode = { binary: 2, close: 8, ping: 9, pong: 10 } as const;

/** One whole message as a client sends it. Its masking key is zero, so that the payload stands as it is. */
export function clientFrame(operation: number, payload: Uint8Array): Buffer {
  const size = payload.length < 126 ? 0 : payload.length < 0x10000 ? 2 : 8;
  const header = Buffer.alloc(2 + size + 4);
  header[0] = 0x80 | operation;
  if (size === 0) header[1] = 0x80 | payload.length;
  else if (size === 2) {
    header[1] = 0x80 | 126;
    header.writeUInt16BE(payload.length, 2);
  } else {
    header[1] = 0x80 | 127;
    header.writeBigUInt64BE(BigInt(payload.length), 2);
  }
  return Buffer.concat([header, payload]);
}

/** Takes the bytes of a server, in whatever pieces, and gives each frame. @throws on a fragmented or compressed one. */
export function createFrameReader(onFrame: (operation: number, payload: Buffer) => void): (piece: Buffer) => void {
  let waiting: Buffer = Buffer.alloc(0);
  return (piece) => {
    const bytes = waiting.length === 0 ? piece : Buffer.concat([waiting, piece]);
    let at = 0;
    for (let frame = frameAt(bytes, at); frame !== undefined; frame = frameAt(bytes, at)) {
      onFrame(frame.operation, bytes.subarray(frame.begin, frame.end));
      at = frame.end;
    }
    waiting = at === bytes.length ? Buffer.alloc(0) : bytes.subarray(at);
  };
}

type Frame = { readonly operation: number; readonly begin: number; readonly end: number };

/** The frame that begins at a place; undefined when not all of it is there. */
function frameAt(bytes: Buffer, at: number): Frame | undefined {
  const [first, second] = [bytes[at], bytes[at + 1]];
  if (first === undefined || second === undefined) return undefined;
  if ((first & 0xf0) !== 0x80 || second > 127) throw new Error("The load reads whole, plain frames of a server only.");
  const size = second < 126 ? 0 : second === 126 ? 2 : 8;
  const begin = at + 2 + size;
  if (begin > bytes.length) return undefined;
  const length = size === 0 ? second : size === 2 ? bytes.readUInt16BE(at + 2) : Number(bytes.readBigUInt64BE(at + 2));
  return begin + length > bytes.length ? undefined : { operation: first & 0x0f, begin, end: begin + length };
}
