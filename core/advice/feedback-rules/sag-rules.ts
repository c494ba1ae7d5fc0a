/** Sag comes first: outside its range nothing later in the stroke can be judged. */
import type { FeedbackRule } from "../feedback-rule.ts";

export const sagRules: readonly FeedbackRule[] = [
  {
    id: "sag-above-target",
    stage: "sag",
    ends: ["front", "rear"],
    when: { all: ["sag above target"], none: ["loses air"] },
    moves: [
      { at: "suspension", adjuster: "main-pressure", direction: "raise", size: "sag to target" },
      { at: "suspension", adjuster: "preload", direction: "raise", size: "sag to target" },
      { at: "suspension", adjuster: "spring-rate", direction: "raise", size: "sag to target" },
    ],
    coupled: "rebound",
    reason: "It rests too deep in its travel: correct the sag before anything later in the stroke.",
    notice: "It sits higher and has more travel in hand.",
    otherwise: "Measure the sag again, moving and at rest; a spring that cannot hold its sag may lose air.",
    provenance: "physics",
  },
  {
    id: "sag-below-target",
    stage: "sag",
    ends: ["front", "rear"],
    when: { all: ["sag below target"] },
    moves: [
      { at: "suspension", adjuster: "main-pressure", direction: "lower", size: "sag to target" },
      { at: "suspension", adjuster: "preload", direction: "lower", size: "sag to target" },
      { at: "suspension", adjuster: "spring-rate", direction: "lower", size: "sag to target" },
    ],
    coupled: "rebound",
    reason: "It rests too high in its travel: correct the sag before anything later in the stroke.",
    notice: "It follows small bumps better and the wheel stays on the ground.",
    otherwise: "Check for friction: a part that sticks shows less sag than its spring has.",
    provenance: "physics",
  },
];
