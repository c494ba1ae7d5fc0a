/** All rules of advice on feedback, in the trade's order: damage, sag, travel, spring feel, damping, grip, balance. */
import type { FeedbackRule } from "../feedback-rule.ts";
import { balanceRules } from "./balance-rules.ts";
import { damageRules } from "./damage-rules.ts";
import { dampingRules } from "./damping-rules.ts";
import { gripRules } from "./grip-rules.ts";
import { sagRules } from "./sag-rules.ts";
import { springFeelRules } from "./spring-feel-rules.ts";
import { travelRules } from "./travel-rules.ts";

export const feedbackRules: readonly FeedbackRule[] = [
  ...damageRules,
  ...sagRules,
  ...travelRules,
  ...springFeelRules,
  ...dampingRules,
  ...gripRules,
  ...balanceRules,
];
