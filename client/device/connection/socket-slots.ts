/**
 * A cap on a device's sockets. Each document has a socket of its own, and a
 * team of many riders and seasons has more documents than a browser and a pit
 * laptop should keep sockets for: those of the open weekend go first and stay,
 * the others take turns.
 */

/** Sockets of one device: enough for the team and two seasons of fifteen riders without taking turns. */
const MOST_SOCKETS = 32;
/** Sockets that the documents of the highest ranks leave to the others when all of them are in use. */
const LEFT_FOR_TURNS = 4;

/** 0 for the team, 1 for the season that is written, 2 for all else. */
export type Rank = 0 | 1 | 2;

export interface SocketSlots {
  /**
   * Calls `onPlace` once, at once or when there is a place.
   * @returns what calls the wish off, or gives the place back; a second call does nothing.
   */
  take(rank: Rank, onPlace: () => void): () => void;
  /** Whether a document of this rank that has a place and nothing to do should give it to another one. */
  shouldMakeRoom(rank: Rank): boolean;
}

interface Wish {
  readonly rank: Rank;
  readonly onPlace: () => void;
}

/** @param most sockets, 1 or more */
export function createSocketSlots(most = MOST_SOCKETS): SocketSlots {
  const placed = new Set<Wish>();
  const waiting: Wish[] = [];
  const place = (wish: Wish): void => {
    placed.add(wish);
    wish.onPlace();
  };
  /** The highest rank first, and within a rank who has waited longest. */
  const next = (): Wish | undefined => {
    const best = Math.min(...waiting.map(({ rank }) => rank));
    const index = waiting.findIndex(({ rank }) => rank === best);
    return index < 0 ? undefined : waiting.splice(index, 1)[0];
  };
  return {
    take: (rank, onPlace) => {
      const wish: Wish = { rank, onPlace };
      if (placed.size < most) place(wish);
      else waiting.push(wish);
      return () => {
        const index = waiting.indexOf(wish);
        if (index >= 0) waiting.splice(index, 1);
        if (!placed.delete(wish)) return;
        const successor = next();
        if (successor) place(successor);
      };
    },
    shouldMakeRoom: (rank) => {
      if (waiting.length === 0 || rank === 0) return false;
      if (rank === 2 || waiting.some((wish) => wish.rank <= rank)) return true;
      const pinned = [...placed].filter((wish) => wish.rank < 2).length;
      return pinned > most - Math.min(LEFT_FOR_TURNS, most - 1);
    },
  };
}
