/**
 * What came of a change, as far as the runs before and after it tell: facts to judge by, and no judgement. One run
 * proves little, since course and rider change too.
 */

import type { End } from "#core/team/place.ts";
import type { Change } from "#core/weekend/changelog.ts";
import { type EndFeedback, type FeelingOf, feelings } from "#core/weekend/run.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { answeredRun } from "./changelog-text.ts";

/** What the rider complained of at an end in two runs; undefined where he said nothing of it, which is not "good". */
export interface ComplaintsThenAndNow {
  readonly before: number | undefined;
  readonly after: number | undefined;
}

/**
 * - "start": on the bike for the rider's first run of the weekend, so that there is nothing to compare with
 * - "taken back": undone later
 * - "not ridden": no run of the weekend has had it on the bike
 * - "ridden": `before` and `after` are the numbers of the two runs; `seconds` is after less before, where both have a time
 */
export type ChangeOutcome =
  | { readonly is: "start" | "taken back" | "not ridden" }
  | {
      readonly is: "ridden";
      readonly before: number;
      readonly after: number;
      readonly sameSession: boolean;
      readonly seconds: number | undefined;
      readonly complaints: Readonly<Record<End, ComplaintsThenAndNow>>;
    };

/**
 * The outcome of changes that were made together.
 * @param runs the rider's runs of the weekend in their order; the first is number 1
 * @param log all changes of the rider, to tell what was undone and what was only confirmed
 */
export function changeOutcome(
  changes: readonly [Change, ...Change[]],
  runs: readonly LoggedRun[],
  log: readonly Change[],
): ChangeOutcome {
  const undone = new Set(log.flatMap(({ cause }) => (cause?.type === "revert" ? cause.record : [])));
  if (changes.every(({ id }) => undone.has(id))) return { is: "taken back" };
  const made = changes[0];
  const names = namesOf(changes, log);
  const after = runs.findIndex(({ run, at }) => (run.setup ? run.setup.some((id) => names.has(id)) : at > made.at));
  if (after < 0) return { is: "not ridden" };
  if (after === 0) return { is: "start" };
  const answered = answeredRun(made);
  const asked = runs.findIndex(({ id }) => id === answered);
  const before = asked >= 0 && asked < after ? asked : after - 1;
  return compared(runs, before, after);
}

/** Feelings that are not good, and things noticed; undefined when nothing of the kind was said. */
export function complaintsOf(feedback: EndFeedback): number | undefined {
  const said = (Object.keys(feelings) as FeelingOf[]).flatMap((part) => feedback[part] ?? []);
  const noticed = feedback.noticed ?? [];
  if (said.length === 0 && noticed.length === 0) return undefined;
  return said.filter((feeling) => feeling !== "good").length + noticed.length;
}

/** The records by which a run says that the changes were on the bike: their own, and those that confirm them. */
function namesOf(changes: readonly Change[], log: readonly Change[]): ReadonlySet<string> {
  const names = new Set(changes.map(({ id }) => id));
  for (const { id, cause } of [...log].reverse()) {
    if (cause?.type === "confirmation" && names.has(cause.record)) names.add(id);
  }
  return names;
}

function compared(runs: readonly LoggedRun[], before: number, after: number): ChangeOutcome {
  const [then, now] = [runs[before]?.run, runs[after]?.run];
  if (!then || !now) throw new Error("A change is compared between two runs that there are.");
  const seconds =
    then.timeSeconds === undefined || now.timeSeconds === undefined ? undefined : now.timeSeconds - then.timeSeconds;
  const complaints = (end: End) => ({ before: complaintsOf(then[end]), after: complaintsOf(now[end]) });
  return {
    is: "ridden",
    before: before + 1,
    after: after + 1,
    sameSession: then.session === now.session,
    seconds,
    complaints: { front: complaints("front"), rear: complaints("rear") },
  };
}
