/**
 * The first number (lib0 variable-length unsigned integer) of every message on the socket.
 * 0 to 3 are y-websocket's own. Ours start at 100, so that a stock client, which looks its handler up by number,
 * finds none and goes on.
 */
export const messageType = {
  sync: 0,
  awareness: 1,
  auth: 2,
  queryAwareness: 3,
  durableAcknowledgement: 100,
  refusal: 101,
  receipts: 102,
} as const;

/** The second number of a sync message. Source: y-protocols 1.0, sync.js. */
export const syncMessageType = { step1: 0, step2: 1, update: 2 } as const;
