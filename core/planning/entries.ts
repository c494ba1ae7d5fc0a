/**
 * What people do, as entries for a writer: each function turns one act into the
 * values to write, with the cause that the changelog shows. Nothing is written
 * here; a limit that the act would break comes back instead.
 */
import { adjusterName } from "#core/advice/adjuster-names.ts";
import type { Adjustment } from "#core/advice/adjustment.ts";
import { checkValue, describeLimitProblem, type LimitProblem } from "#core/advice/limits.ts";
import type { Cause } from "#core/ledger/cause.ts";
import { type Current, settledValue } from "#core/ledger/ledger.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { ServiceWork } from "#core/service/service-work.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { Place } from "#core/team/place.ts";
import { describeQuantity } from "#core/team/quantity-schema.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { NoRunReason } from "#core/weekend/no-run.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { decisionKind, noRunKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";

export type EntriesResult =
  | { readonly ok: true; readonly entries: readonly WriteEntry[] }
  | { readonly ok: false; readonly problem: EntryProblem };

/** Why an act cannot be written down. */
export type EntryProblem =
  /** A limit, or those that leave no order of steps. */
  | { readonly type: "limits"; readonly problems: readonly LimitProblem[] }
  | { readonly type: "no value"; readonly path: AdjusterPath }
  | { readonly type: "nothing reported" }
  | { readonly type: "no such service"; readonly place: Place; readonly bike: string; readonly what: ServiceWork };

/** One sentence for a person; quantities as `quantityText` writes them. */
export function describeEntryProblem(problem: EntryProblem, quantityText = describeQuantity): string {
  switch (problem.type) {
    case "limits":
      return problem.problems.map((limit) => describeLimitProblem(limit, quantityText)).join(" ");
    case "no value":
      return `${adjusterName(problem.path)}: enter a value.`;
    case "nothing reported":
      return "There is no reported change to confirm.";
    case "no such service":
      return `The ${problem.place} of ${problem.bike} has no service of the kind "${problem.what}".`;
  }
}

/** Where and for what a setting is made. */
export interface Occasion {
  readonly mounted: RiderBike;
  readonly weekendId: string;
  readonly sessionId?: string;
  /** Temperature and altitude at which a pressure is read now. */
  readonly heldAt?: Surroundings;
  /** Settled readings on the bike, which the new values have to agree with. */
  readonly onTheBike: SetupValues;
}

/**
 * Settings to make, each checked against its limits and against the others as they will be.
 * `standing` is "reported" when the rider says so and no mechanic has seen it.
 */
export function settingEntries(
  occasion: Occasion,
  values: SetupValues,
  cause: Cause,
  standing: Setting["standing"] = "on the bike",
): EntriesResult {
  const { mounted, weekendId, sessionId, heldAt, onTheBike } = occasion;
  const after: SetupValues = { ...onTheBike, ...values };
  const entries: WriteEntry[] = [];
  for (const [path, quantity] of Object.entries(values) as [AdjusterPath, TypedQuantity][]) {
    const problem = checkValue(mounted, path, quantity, after);
    if (problem) return { ok: false, problem: { type: "limits", problems: [problem] } };
    const setting: Setting = {
      quantity,
      standing,
      weekend: weekendId,
      ...(sessionId !== undefined && { session: sessionId }),
      ...(heldAt && { heldAt }),
    };
    entries.push({ kind: settingKind, key: settingKey(mounted.riderId, mounted.bikeId, path), value: setting, cause });
  }
  return { ok: true, entries };
}

/** Takes an adjustment: its setting, what follows from it, and that the run is answered. */
export function adjustmentEntries(occasion: Occasion, logged: LoggedRun, adjustment: Adjustment): EntriesResult {
  const values: Partial<Record<AdjusterPath, TypedQuantity>> = { [adjustment.setting.path]: adjustment.setting.to };
  for (const { path, to } of adjustment.coupled) values[path] = to;
  const settings = settingEntries(occasion, values, { type: "advice", rule: adjustment.rule, run: logged.id });
  if (!settings.ok) return settings;
  return { ok: true, entries: [...settings.entries, decisionEntry(logged, "adjusted")] };
}

/** That a run was answered, by a change or by leaving the bike as it is. */
export function decisionEntry(logged: LoggedRun, outcome: "adjusted" | "left as it is"): WriteEntry {
  return { kind: decisionKind, key: `${logged.riderId}/${logged.id}`, value: { outcome } };
}

/** That no run of these sessions is to be expected of a rider. */
export function noRunEntries(
  { riderId, weekendId }: { readonly riderId: string; readonly weekendId: string },
  sessionIds: readonly string[],
  reason: NoRunReason,
): readonly WriteEntry[] {
  return sessionIds.map((id) => ({ kind: noRunKind, key: `${riderId}/${weekendId}/${id}`, value: { reason } }));
}

/** A mechanic has seen what the rider reported, and it is so. */
export function confirmationEntry(mounted: RiderBike, path: AdjusterPath, current: Current<Setting>): EntriesResult {
  const reported = settledValue(current);
  const head = current.state === "settled" ? current.heads[0] : undefined;
  if (!reported || !head || reported.standing !== "reported") {
    return { ok: false, problem: { type: "nothing reported" } };
  }
  const value: Setting = { ...reported, standing: "on the bike" };
  return {
    ok: true,
    entries: [
      {
        kind: settingKind,
        key: settingKey(mounted.riderId, mounted.bikeId, path),
        value,
        cause: { type: "confirmation", record: head.id },
      },
    ],
  };
}
