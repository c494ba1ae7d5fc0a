import { maximumPresentDevices, readPresence, writePresence } from "../presence.ts";

/**
 * Lets through a link, in both directions, what is news to its other end. Both servers echo presence to every socket, so
 * without it each state would come back to the server that it came from, and with servers in a ring the state of a
 * device that has gone could go round for ever in front of the word that it has gone.
 */
export type LinkPresence = {
  /** @returns the part that has not been on this link yet. */
  pass(payload: Uint8Array): Uint8Array | "nothing" | "malformed";
};

export function createLinkPresence(): LinkPresence {
  const newest = new Map<number, { readonly clock: number; readonly isGone: boolean }>();

  function forgetOldest(): void {
    const [oldest] = newest.keys();
    if (oldest !== undefined) newest.delete(oldest);
  }

  return {
    pass(payload) {
      const changes = readPresence(payload);
      if (changes === undefined) return "malformed";
      const news = changes.filter(({ client, clock, state }) => {
        const isGone = state === "null";
        const known = newest.get(client);
        if (known !== undefined && clock < known.clock) return false;
        if (clock === known?.clock && (known.isGone || !isGone)) return false;
        newest.set(client, { clock, isGone });
        if (newest.size > 2 * maximumPresentDevices) forgetOldest();
        return true;
      });
      return news.length === 0 ? "nothing" : writePresence(news);
    },
  };
}
