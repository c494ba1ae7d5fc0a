/** All rules of advice on feedback, in the trade's order: sag, travel, spring feel, damping, grip. */
import type { FeedbackRule } from "../feedback-rule.ts";
import { dampingRules } from "./damping-rules.ts";
import { gripRules } from "./grip-rules.ts";
import { sagRules } from "./sag-rules.ts";
import { springFeelRules } from "./spring-feel-rules.ts";
import { travelRules } from "./travel-rules.ts";

export const feedbackRules: readonly FeedbackRule[] = [
  ...sagRules,
  ...travelRules,
  ...springFeelRules,
  ...dampingRules,
  ...gripRules,
];
