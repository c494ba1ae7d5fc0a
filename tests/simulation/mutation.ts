/**
 * Remedies that can be turned off, one at a time: the simulation has to find the
 * fault that each of them keeps away, or it proves nothing.
 */
export const mutations = [
  /** The server acknowledges before its disk has flushed. */
  "acknowledge before the flush",
  /** The device counts an update as saved when it has handed it to the storage. */
  "count as saved when handed over",
  /** A device settles a dispute by itself: the newest by the clock counts. */
  "last writer wins",
  /** A log that is put together forgets what another tab kept. */
  "compact over another tab",
  /** Clocks alone are compared, as before there was a digest. */
  "compare clocks alone",
  /** The server believes that its disk holds the snapshot that it wrote, and lets the updates go. */
  "believe a snapshot unread",
  /** The server applies an update and inspects it afterwards. */
  "apply before the guard",
  /** The server does not ask for what an update with a gap builds on. */
  "never ask for a hole",
  /** A device keeps a socket that says nothing. */
  "never give up a silent socket",
  /** A link keeps a socket to the upstream that says nothing. */
  "never give up a silent link",
  /** A server looks only once at which documents its upstream has. */
  "look at the upstream once",
  /** A device of an old version keeps only what it can read. */
  "drop what an old version cannot read",
] as const;
export type Mutation = (typeof mutations)[number];
