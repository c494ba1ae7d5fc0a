/** What comes before an adjustment, in English. */
import { nameOfPath } from "./adjuster-names.ts";
import type { Referral, WaitsFor } from "./adjustment.ts";
import { ruleWords } from "./rule-words.ts";

/** Why no setting cures it, in one sentence. */
export function describeReferralReason({ rule, cause }: Referral): string {
  if (cause === "two changes did not help") return "Two changes for the same complaint have not cured it.";
  return ruleWords(rule)?.reason ?? "";
}

/** What to do instead. */
export function describeReferralAction({ rule, cause }: Referral): string {
  const otherwise = ruleWords(rule)?.otherwise ?? "";
  return cause === "two changes did not help" ? `Stop tuning: look at service and damage. ${otherwise}` : otherwise;
}

/** Why an adjustment has to wait. */
export function describeWaitsFor(waitsFor: WaitsFor): string {
  switch (waitsFor.type) {
    case "a look at the bike":
      return `Not before this was looked at: ${describeReferralReason(waitsFor.referral)}`;
    case "another change":
      return `One change at a time: first the ${nameOfPath(waitsFor.path)}, then ride.`;
  }
}
