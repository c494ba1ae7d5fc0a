/** Grip, once the stroke is right. */
import type { FeedbackRule } from "../feedback-rule.ts";

export const gripRules: readonly FeedbackRule[] = [
  {
    id: "front-slides",
    stage: "grip",
    ends: ["front"],
    when: { all: ["slides"] },
    moves: [
      { at: "tyre", adjuster: "tyre-pressure", direction: "lower", size: "felt" },
      { at: "suspension", adjuster: "main-pressure", direction: "lower", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The front pushes wide: let the tyre and the fork follow the ground better.",
    notice: "The front holds its line in flat turns.",
    otherwise: "Mind the rim: do not go lower in the tyre where stones strike it.",
    provenance: "common practice",
  },
  {
    id: "rear-slides",
    stage: "grip",
    ends: ["rear"],
    when: { all: ["slides"] },
    moves: [
      { at: "tyre", adjuster: "tyre-pressure", direction: "lower", size: "felt" },
      { at: "suspension", adjuster: "rebound", direction: "open", size: "felt" },
      { at: "suspension", adjuster: "main-pressure", direction: "lower", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The rear steps out: let the tyre and the shock follow the ground better.",
    notice: "The rear follows through turns and under braking.",
    otherwise: "Compare the two ends: a rear that stands high and stiff has less load to grip with.",
    provenance: "common practice",
  },
];
