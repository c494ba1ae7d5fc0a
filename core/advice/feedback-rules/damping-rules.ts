/** The return. */
import type { FeedbackRule } from "../feedback-rule.ts";

export const dampingRules: readonly FeedbackRule[] = [
  {
    id: "packs-down",
    stage: "damping",
    ends: ["front", "rear"],
    when: { all: ["middle harsh", "returns too slowly"] },
    moves: [{ at: "suspension", adjuster: "rebound", direction: "open", size: "felt" }],
    reason: "It packs down: it has not come back before the next hit, and gets harsher hit by hit.",
    notice: "Rows of roots no longer get harsher towards their end.",
    otherwise: "One more step; after that less compression damping.",
    provenance: "common practice",
  },
  {
    id: "returns-too-slowly",
    stage: "damping",
    ends: ["front", "rear"],
    when: { all: ["returns too slowly"], none: ["middle harsh"] },
    moves: [{ at: "suspension", adjuster: "rebound", direction: "open", size: "felt" }],
    reason: "It comes back too slowly and has no travel for the next hit: open the rebound.",
    notice: "It is back up before the next hit.",
    otherwise: "If opening does nothing, the damper wants service.",
    provenance: "common practice",
  },
  {
    id: "returns-too-fast",
    stage: "damping",
    ends: ["front", "rear"],
    when: { all: ["returns too fast"] },
    moves: [{ at: "suspension", adjuster: "rebound", direction: "close", size: "felt" }],
    reason: "It comes back too fast and throws the wheel or the rider: close the rebound.",
    notice: "It stays calm off lips and after landings.",
    otherwise: "If closing does nothing, the damper wants service.",
    provenance: "common practice",
  },
];
