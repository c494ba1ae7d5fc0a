/** Symptoms that exclude each other: ask before touching the bike. */
import type { ConflictRule } from "../feedback-rule.ts";

export const conflictRules: readonly ConflictRule[] = [
  {
    id: "bottoms-and-never-reaches",
    ends: ["front", "rear"],
    all: ["all travel used too easily", "end never reached"],
    question:
      "It was logged as using all its travel and as never reaching the end. Which hit used it all, and which should have?",
  },
  {
    id: "bottoms-with-travel-left",
    ends: ["front", "rear"],
    all: ["all travel used too easily", "travel left over"],
    question: "Bottom-outs were counted, but the ring shows travel left over. Was the ring set back before the run?",
  },
  {
    id: "soft-and-too-little-sag",
    ends: ["front", "rear"],
    all: ["start too soft", "sag below target"],
    question:
      "It feels too soft at the start but rests too high. Was the sag measured in riding position, with all the kit on?",
  },
];
