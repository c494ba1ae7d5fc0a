/**
 * A random linear fountain: which blocks of a content are mixed (exclusive or) in a frame, and the blocks again from
 * enough frames, whichever they are.
 *
 * The first frames carry one block each, so that whoever misses none needs no more. Every later frame mixes about half
 * of the blocks, drawn by its number. From any B + e such frames, B blocks come back with a probability of at least
 * 1 - 2^-e, whatever B is (D. J. C. MacKay, "Fountain codes", IEE Proceedings Communications 152 (6), 2005, pages 1062 to
 * 1068): 1.6 frames more than blocks on average. Sparse codes (LT, Raptor) need less arithmetic, but more frames at the
 * few hundred blocks here, and frames cost time in front of the camera.
 */
import { digest } from "lib0/hash/sha256";

/** A set of blocks: bit `block % 32` of word `floor(block / 32)`. */
export type BlockSet = Uint32Array;

const DIGEST_BITS = 256;

/**
 * The blocks that are mixed in frame `number`; never none.
 *
 * Drawn with SHA-256 as a counter. A generator that is linear in its seed over GF(2) (shift registers, xorshift) must
 * not stand here: with a 32-bit seed its sets would span 32 dimensions at most, and no number of frames would do.
 */
export function blocksOfFrame(session: Uint8Array, number: number, blocks: number): BlockSet {
  const set: BlockSet = new Uint32Array(Math.ceil(blocks / 32));
  if (number < blocks) {
    include(set, number);
    return set;
  }
  const seed = new Uint8Array(session.length + 8);
  seed.set(session);
  const view = new DataView(seed.buffer);
  view.setUint32(session.length, number);
  let drawn = new Uint8Array();
  for (let block = 0; block < blocks; block++) {
    if (block % DIGEST_BITS === 0) {
      view.setUint32(session.length + 4, block / DIGEST_BITS);
      drawn = digest(seed);
    }
    const bit = block % DIGEST_BITS;
    if (((drawn[bit >> 3] ?? 0) >> (bit & 7)) & 1) include(set, block);
  }
  if (set.every((word) => word === 0)) include(set, number % blocks);
  return set;
}

export function includes(set: BlockSet, block: number): boolean {
  return (((set[block >> 5] ?? 0) >>> (block & 31)) & 1) === 1;
}

/** Turns `into` into the exclusive or of both. */
export function mix(into: Uint8Array | Uint32Array, other: Uint8Array | Uint32Array): void {
  for (let index = 0; index < into.length; index++) into[index] = (into[index] ?? 0) ^ (other[index] ?? 0);
}

/** Gathers mixtures until all blocks are known. */
export interface BlockGathering {
  /** False when the mixture follows from those that are here. Takes over both arrays. */
  add(set: BlockSet, mixture: Uint8Array): boolean;
  /** Independent mixtures that are here; with as many as there are blocks, all are known. */
  known(): number;
  /** The blocks one behind the other; undefined while some are not known. */
  joined(): Uint8Array | undefined;
}

/** Gaussian elimination, a mixture at a time; `size` is the bytes of a block. */
export function gatherBlocks(blocks: number, size: number): BlockGathering {
  /** By its lowest block; at most one mixture each. */
  const rows: ({ readonly set: BlockSet; readonly mixture: Uint8Array } | undefined)[] = new Array(blocks);
  let known = 0;
  return {
    add: (set, mixture) => {
      for (let block = 0; block < blocks; block++) {
        if (!includes(set, block)) continue;
        const row = rows[block];
        if (row === undefined) {
          rows[block] = { set, mixture };
          known += 1;
          return true;
        }
        mix(set, row.set);
        mix(mixture, row.mixture);
      }
      return false;
    },
    known: () => known,
    joined: () => {
      if (known < blocks) return undefined;
      const whole = new Uint8Array(blocks * size);
      for (let block = blocks - 1; block >= 0; block--) {
        const row = rows[block];
        if (row === undefined) throw new Error(`Block ${block} is counted as known and is not here.`);
        const plain = row.mixture.slice();
        for (let later = block + 1; later < blocks; later++) {
          if (includes(row.set, later)) mix(plain, whole.subarray(later * size, (later + 1) * size));
        }
        whole.set(plain, block * size);
      }
      return whole;
    },
  };
}

function include(set: BlockSet, block: number): void {
  set[block >> 5] = (set[block >> 5] ?? 0) | (1 << (block & 31));
}
