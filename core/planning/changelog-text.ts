/** Why a change was made, in one sentence for a person. */
import { ruleWords } from "#core/advice/rule-words.ts";
import type { Change } from "#core/weekend/changelog.ts";

/** The reason of a change as its record tells it. */
export function describeCause({ cause, voided }: Pick<Change, "cause" | "voided">): string {
  if (voided !== undefined) return voided;
  switch (cause?.type) {
    case undefined:
      return "No reason was given.";
    case "advice":
      return ruleWords(cause.rule)?.reason ?? `By the rule "${cause.rule}".`;
    case "own baseline":
      return `Back to the own baseline for ${cause.courseTypes.join(", ")}.`;
    case "conditions":
      return "From the weekend's setup for the course and the conditions.";
    case "own change":
      return "The rider's own change on the hill.";
    case "by hand":
      return cause.note === undefined || cause.note === "" ? "Set by hand." : `Set by hand: ${cause.note}`;
    case "revert":
      return "Undone: back to the value before.";
    case "resolution":
      return "A dispute, resolved by looking at the bike.";
    case "carry-over":
      return "Carried over from the season before.";
    case "confirmation":
      return "The rider's report, confirmed at the bike.";
    case "approval":
      return "Approved as baseline.";
    case "setup":
      return "First entry.";
  }
}

/** The run that a change answers, if it answers one. */
export function answeredRun({ cause }: Pick<Change, "cause">): string | undefined {
  return cause?.type === "advice" || cause?.type === "by hand" ? cause.run : undefined;
}
