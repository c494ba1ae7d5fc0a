/** What the network between a device and the pit laptop does. */
export type NetworkMode =
  | { readonly kind: "pass" }
  /** A router that lost its power and came back: what is open is reset, and what comes is refused. */
  | { readonly kind: "cut" }
  /** Every chunk takes a time of its own, from 0 to `longestMs`; none overtakes another. */
  | { readonly kind: "delay"; readonly longestMs: number }
  /** A black hole: both sides stay open, new connections too, and nothing passes in either direction. */
  | { readonly kind: "half-open" }
  /** Each direction of each connection is closed after 1 to `mostBytes` more bytes, in the middle of a frame. */
  | { readonly kind: "truncate"; readonly mostBytes: number };
