/** Sag is right, and the end of the stroke is not. */
import type { FeedbackRule } from "../feedback-rule.ts";

const sagIsWrong = ["sag above target", "sag below target"] as const;

export const travelRules: readonly FeedbackRule[] = [
  {
    id: "full-travel-too-easily",
    stage: "travel",
    ends: ["front", "rear"],
    when: { all: ["all travel used too easily"], none: sagIsWrong },
    moves: [
      { at: "suspension", adjuster: "secondary-pressure", direction: "raise", size: "hit within travel" },
      { at: "suspension", adjuster: "volume-spacers", direction: "raise", size: "hit within travel" },
      { at: "suspension", adjuster: "main-pressure", direction: "raise", size: "hit within travel" },
      { at: "suspension", adjuster: "spring-rate", direction: "raise", size: "hit within travel" },
      { at: "suspension", adjuster: "high-speed-compression", direction: "close", size: "felt" },
    ],
    coupled: "rebound",
    reason: "All travel is used too often though the sag is right: support late in the stroke first.",
    notice: "Big hits stay off the end of the stroke; the start feels as before.",
    otherwise: "Then raise the main pressure; after that, more high-speed compression.",
    provenance: "common practice",
  },
  {
    id: "end-hits-hard",
    stage: "travel",
    ends: ["front", "rear"],
    when: { all: ["end hits hard"], none: [...sagIsWrong, "all travel used too easily"] },
    moves: [
      { at: "suspension", adjuster: "secondary-pressure", direction: "raise", size: "hit within travel" },
      { at: "suspension", adjuster: "volume-spacers", direction: "raise", size: "hit within travel" },
      { at: "suspension", adjuster: "high-speed-compression", direction: "close", size: "felt" },
      { at: "suspension", adjuster: "main-pressure", direction: "raise", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The end of the stroke is met too hard: more support just before it.",
    notice: "The last part of the stroke comes on more gently.",
    otherwise: "Check the bottom-out bumper and whether the tyre meets the frame or crown.",
    provenance: "common practice",
  },
  {
    id: "travel-never-used",
    stage: "travel",
    ends: ["front", "rear"],
    when: { all: ["travel left over", "end never reached"], none: sagIsWrong },
    moves: [
      { at: "suspension", adjuster: "secondary-pressure", direction: "lower", size: "hit uses travel" },
      { at: "suspension", adjuster: "volume-spacers", direction: "lower", size: "hit uses travel" },
      { at: "suspension", adjuster: "main-pressure", direction: "lower", size: "hit uses travel" },
      { at: "suspension", adjuster: "high-speed-compression", direction: "open", size: "felt" },
    ],
    coupled: "rebound",
    reason: "The sag is right and hits that should use the travel do not: less support late in the stroke.",
    notice: "Big hits go deeper and are felt less in the hands and feet.",
    otherwise: "Then lower the main pressure; a part that sticks late in its stroke goes to service.",
    provenance: "common practice",
  },
  {
    id: "end-never-reached",
    stage: "travel",
    ends: ["front", "rear"],
    when: { all: ["end never reached"], none: [...sagIsWrong, "travel left over"] },
    moves: [
      { at: "suspension", adjuster: "secondary-pressure", direction: "lower", size: "felt" },
      { at: "suspension", adjuster: "volume-spacers", direction: "lower", size: "felt" },
      { at: "suspension", adjuster: "high-speed-compression", direction: "open", size: "felt" },
    ],
    reason: "The rider says that the end of the stroke is never reached: a small step less support there.",
    notice: "Hard landings use a little more of the travel.",
    otherwise: "Measure the travel used with the ring on the next run before going further.",
    provenance: "common practice",
  },
];
