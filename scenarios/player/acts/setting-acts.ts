/** Acts on single settings: by hand, on the hill, confirmed, resolved, undone. */
import { checkValue, describeLimitProblem } from "#core/advice/limits.ts";
import type { Cause } from "#core/ledger/cause.ts";
import { sameJson } from "#core/ledger/plain-json.ts";
import { describeLedgerProblem, type WriteEntry } from "#core/ledger/write.ts";
import { confirmationEntry, decisionEntry, describeEntryProblem, settingEntries } from "#core/planning/entries.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";
import { settingKey, settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { decisionKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { StepOf } from "#scenarios/schema/step.ts";
import { type ActResult, type Desk, mountedOf, outcomeOf, refused, writeAll } from "./act.ts";
import { lastRun, noRun } from "./last-run.ts";
import { benchOf, rideOf } from "./surroundings.ts";

export function setByHand(desk: Desk, step: StepOf<"set by hand">): ActResult {
  const answered = step.answers && lastRun(desk, step.rider);
  if (step.answers && !answered) return refused(noRun);
  const cause: Cause = {
    type: "by hand",
    ...(step.note !== undefined && { note: step.note }),
    ...(answered && { run: answered.id }),
  };
  const decisions = answered ? [decisionEntry(answered, "adjusted")] : [];
  return setValues(desk, step, cause, "on the bike", benchOf(desk, step.session), decisions);
}

export function changeOnTheHill(desk: Desk, step: StepOf<"change on the hill">): ActResult {
  return setValues(desk, step, { type: "own change" }, "reported", rideOf(desk, step.session));
}

function setValues(
  desk: Desk,
  step: StepOf<"set by hand" | "change on the hill">,
  cause: Cause,
  standing: Setting["standing"],
  heldAt: Surroundings | undefined,
  decisions: readonly WriteEntry[] = [],
): ActResult {
  const mounted = mountedOf(desk, step.rider);
  const settings = settingsOnBike(desk.device.ledger, mounted);
  const paths = Object.keys(step.values) as AdjusterPath[];
  const disputed = paths.find((path) => settings.get(path)?.state === "disputed");
  if (disputed) return refused(`${disputed} is in dispute: somebody has to look at the bike first.`);
  const occasion = {
    mounted,
    weekendId: desk.weekendId,
    sessionId: step.session,
    ...(heldAt && { heldAt }),
    onTheBike: valuesOnBike(settings),
  };
  const entries = settingEntries(occasion, step.values, cause, standing);
  return entries.ok
    ? writeAll(desk, [...entries.entries, ...decisions])
    : refused(describeEntryProblem(entries.problem));
}

export function confirmReported(desk: Desk, step: StepOf<"confirm">): ActResult {
  const mounted = mountedOf(desk, step.rider);
  const current = settingsOnBike(desk.device.ledger, mounted).get(step.adjuster) ?? { state: "absent" };
  const entries = confirmationEntry(mounted, step.adjuster, current);
  return entries.ok ? writeAll(desk, entries.entries) : refused(describeEntryProblem(entries.problem));
}

/** The claim that was right keeps what it said of where it was read; a value that nobody claimed takes it from the newest. */
export function resolveDispute(desk: Desk, step: StepOf<"resolve dispute">): ActResult {
  const { ledger, writer } = desk.device;
  const mounted = mountedOf(desk, step.rider);
  const settings = settingsOnBike(ledger, mounted);
  const current = settings.get(step.adjuster);
  if (current?.state !== "disputed") return refused(`${step.adjuster} is not in dispute on this device.`);
  const problem = checkValue(mounted, step.adjuster, step.found, valuesOnBike(settings));
  if (problem) return refused(describeLimitProblem(problem));
  const claims = current.claims.flatMap(({ value }) => value ?? []);
  const basis = claims.find(({ quantity }) => sameJson(quantity, step.found)) ?? claims.at(-1);
  const value: Setting = { weekend: desk.weekendId, ...basis, quantity: step.found, standing: "on the bike" };
  return outcomeOf(writer.resolve(settingKind, settingKey(mounted.riderId, mounted.bikeId, step.adjuster), value));
}

/** Takes back one change, or all that were made together with it, and with them that the run was answered. */
export function undoLast(desk: Desk, step: StepOf<"undo">): ActResult {
  const { ledger, writer } = desk.device;
  const changes = changelog(ledger, { riderId: step.rider, weekend: desk.weekendId });
  const last = changes.find(
    (change) =>
      change.current &&
      change.cause?.type !== "revert" &&
      (step.adjuster === undefined || change.path === step.adjuster),
  );
  if (!last) return refused("There is no change of this weekend left to undo.");
  const together =
    step.adjuster !== undefined || last.batch === undefined
      ? [last]
      : changes.filter((change) => change.batch === last.batch && change.current);
  const ids = [...together.map((change) => change.id), ...answersOf(desk, last)];
  // All or nothing: what was in dispute before a change cannot be gone back to.
  if (ids.some((id) => ledger.before(id)?.current.state === "disputed")) {
    return refused("There was a dispute before this change: there is no single value to go back to.");
  }
  const batch = desk.device.newId();
  for (const id of ids) {
    const written = writer.revert(id, { batch });
    if (!written.ok) return refused(describeLedgerProblem(written.problem));
  }
  return { ok: true };
}

/** The decision that was written together with a change: the run is open again when the change is gone. */
function answersOf({ device }: Desk, { batch, cause, riderId }: Change): readonly string[] {
  if (batch === undefined || (cause?.type !== "advice" && cause?.type !== "by hand") || cause.run === undefined)
    return [];
  return device.ledger
    .heads(decisionKind, `${riderId}/${cause.run}`)
    .filter((record) => record.batch === batch)
    .map(({ id }) => id);
}
