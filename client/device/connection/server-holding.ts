/**
 * What the server is proven to hold of one document. Its acknowledgement names
 * clocks and a digest of the content below them; it counts when the content
 * here, below the same clocks, has the same digest.
 */
import { bytesEqual } from "#client/device/bytes-equal.ts";
import type { Clocks, ContentDigest } from "#core/ledger/content-digest.ts";
import type { DurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";

/** `ahead`: the server holds what is not here yet, so nothing can be compared. */
export type Verdict = "proven" | "ahead" | "differs";

export interface ServerHolding {
  /** Proven on this socket; absent before the first proof. */
  held(): Clocks | undefined;
  /** The same from the last socket that proved it: a server does not lose what it has on its disk. */
  lastHeld(): Clocks | undefined;
  acknowledge(acknowledgement: DurableAcknowledgement): Verdict;
  /** What was proven before this start; counts as {@link ServerHolding.lastHeld} where the content here still agrees. */
  recall(acknowledgement: DurableAcknowledgement): void;
  socketEnded(): void;
}

export function createServerHolding(digest: ContentDigest): ServerHolding {
  let held: Clocks | undefined;
  let lastHeld: Clocks | undefined;
  return {
    held: () => held,
    lastHeld: () => lastHeld,
    acknowledge: ({ stateVector, digest: theirs }) => {
      // A server before version 3 says nothing of its content: its clocks are all there is.
      if (theirs !== undefined) {
        const ours = digest.at(stateVector);
        if (ours === undefined) return "ahead";
        if (!bytesEqual(ours, theirs)) return "differs";
      }
      held = stateVector;
      lastHeld = stateVector;
      return "proven";
    },
    recall: ({ stateVector, digest: theirs }) => {
      const ours = digest.at(stateVector);
      if (!lastHeld && ours && theirs && bytesEqual(ours, theirs)) lastHeld = stateVector;
    },
    socketEnded: () => {
      held = undefined;
    },
  };
}
