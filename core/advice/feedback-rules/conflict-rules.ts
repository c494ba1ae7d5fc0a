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
    id: "end-hits-hard-with-travel-left",
    ends: ["front", "rear"],
    all: ["end hits hard", "travel left over"],
    question: "The end was felt as hitting hard, but the ring shows travel left over. What was it that hit hard?",
  },
  {
    id: "soft-and-too-little-sag",
    ends: ["front", "rear"],
    all: ["start too soft", "sag below target"],
    question:
      "It feels too soft at the start but rests too high. Was the sag measured in riding position, with all the kit on?",
  },
  {
    id: "fast-and-packs-down",
    ends: ["front", "rear"],
    all: ["returns too fast", "harsher hit by hit"],
    question:
      "It was logged as returning too fast and as getting harsher hit by hit. On which part of the course was each?",
  },
  {
    id: "fast-and-hangs-back",
    ends: ["rear"],
    all: ["returns too fast", "hangs back"],
    question: "It was logged as returning too fast and as hanging back. On which part of the course was each?",
  },
  {
    id: "kicks-and-returns-slowly",
    ends: ["front", "rear"],
    all: ["kicks back off lips", "returns too slowly"],
    question: "It kicks back off lips but returns too slowly. Is it the damper, or a lip that is met too hard?",
  },
  {
    id: "squirms-and-bounces",
    ends: ["front", "rear"],
    all: ["tyre squirms", "bounces off stones"],
    question: "The tyre squirms in turns and bounces off stones. Which of the two costs more on this course?",
  },
];
