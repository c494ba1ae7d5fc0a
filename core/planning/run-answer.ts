/** What the mechanic decided on a run, for the rider who asked. */
import { feedbackRules } from "#core/advice/feedback-rules/rule-table.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";
import { decisionKind } from "#core/weekend/record-kinds.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { answeredRun } from "./changelog-text.ts";

/** - "disputed": two people decided differently. */
export const answerOutcomes = ["not decided", "adjusted", "left as it is", "disputed"] as const;
export type AnswerOutcome = (typeof answerOutcomes)[number];

export interface RunAnswer {
  readonly outcome: AnswerOutcome;
  /** The settings that were changed for this run and not undone since, oldest first. */
  readonly changes: readonly Change[];
  /** Ids of the feedback rules that were followed: each says what the rider should notice on the next run. */
  readonly rules: readonly string[];
  readonly note: string | undefined;
}

/** The answer to `logged` as far as it is decided. */
export function answerToRun(ledger: Ledger, logged: LoggedRun): RunAnswer {
  const log = changelog(ledger, { riderId: logged.riderId });
  const undone = new Set(log.flatMap(({ cause }) => (cause?.type === "revert" ? cause.record : [])));
  const changes = log.filter((change) => answeredRun(change) === logged.id && !undone.has(change.id)).reverse();
  const rules = new Set(changes.flatMap(({ cause }) => (cause?.type === "advice" ? [cause.rule] : [])));
  return {
    outcome: outcomeOf(ledger, logged),
    changes,
    rules: feedbackRules.filter(({ id }) => rules.has(id)).map(({ id }) => id),
    note: logged.decision?.note,
  };
}

function outcomeOf(ledger: Ledger, { decision, riderId, id }: LoggedRun): AnswerOutcome {
  if (decision) return decision.outcome;
  return ledger.current(decisionKind, `${riderId}/${id}`).state === "disputed" ? "disputed" : "not decided";
}
