/**
 * A rider's setup sheet for one session: for every adjuster the baseline, the
 * weekend's value, what to set at the bench, and what is on the bike.
 */
import { DEFAULT_PUMP } from "#core/advice/bench-operations.ts";
import { type BenchSequence, benchSequence } from "#core/advice/bench-sequence.ts";
import { type SetupRow, type WeekendSetup, weekendSetup } from "#core/advice/weekend-setup.ts";
import { type Current, type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { baselinesFor, type RiderBike, riderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { type Programme, programme, type ScheduledSession } from "#core/weekend/programme.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { benchReadings } from "./bench-readings.ts";

/**
 * How an adjuster stands:
 * - "to set": not set for this weekend yet, or the conditions have changed what it should be
 * - "set": on the bike, as the sheet says
 * - "adjusted": on the bike, with another value for a reason of its own (advice, by hand, the rider's own change, back to baseline, a revert)
 * - "reported": the rider changed it and no mechanic has confirmed it
 * - "disputed": two people say different things are on the bike
 * - "no value": there is nothing to set it to
 */
export const rowStates = ["to set", "set", "adjusted", "reported", "disputed", "no value"] as const;
export type RowState = (typeof rowStates)[number];

export interface SheetRow extends SetupRow {
  readonly state: RowState;
  readonly current: Current<Setting>;
}

export interface SetupSheet {
  readonly mounted: RiderBike;
  readonly programme: Programme;
  readonly session: ScheduledSession;
  readonly setup: WeekendSetup;
  readonly rows: readonly SheetRow[];
  /** The order in which to set what is to set. */
  readonly sequence: BenchSequence;
}

/** Why there is no sheet. */
export type SheetProblem =
  | { readonly type: "unknown weekend"; readonly weekendId: string }
  | { readonly type: "unknown session"; readonly sessionId: string; readonly allowed: readonly string[] }
  | { readonly type: "unknown rider"; readonly riderId: string }
  | { readonly type: "no course"; readonly weekend: string }
  | { readonly type: "no conditions"; readonly session: string };

/** One sentence: what is missing, and where to enter it. */
export function describeSheetProblem(problem: SheetProblem): string {
  switch (problem.type) {
    case "unknown weekend":
      return `There is no weekend "${problem.weekendId}".`;
    case "unknown session":
      return `There is no session "${problem.sessionId}" on this weekend; there are: ${problem.allowed.join(", ") || "none"}.`;
    case "unknown rider":
      return `There is no rider "${problem.riderId}" with a bike in the team.`;
    case "no course":
      return `The course of ${problem.weekend} is not entered yet: enter how steep, jumpy and wet it is.`;
    case "no conditions":
      return `The conditions for ${problem.session} are not entered yet: enter the air temperature and the ground.`;
  }
}

export type SheetResult =
  | { readonly ok: true; readonly sheet: SetupSheet }
  | { readonly ok: false; readonly problem: SheetProblem };

/** The sheet of one rider for one session of a weekend, or what is missing for it. */
export function setupSheet(ledger: Ledger, weekendId: string, sessionId: string, riderId: string): SheetResult {
  const plan = programme(ledger, weekendId);
  if (!plan) return { ok: false, problem: { type: "unknown weekend", weekendId } };
  const session = plan.sessions.find((candidate) => candidate.id === sessionId);
  if (!session) {
    return { ok: false, problem: { type: "unknown session", sessionId, allowed: plan.sessions.map(({ id }) => id) } };
  }
  const mounted = riderBike(ledger, riderId);
  if (!mounted) return { ok: false, problem: { type: "unknown rider", riderId } };
  const { course } = plan;
  if (!course) return { ok: false, problem: { type: "no course", weekend: plan.weekend.name } };
  const { conditions } = session;
  if (!conditions) return { ok: false, problem: { type: "no conditions", session: session.session.name } };
  const setup = weekendSetup({ mounted, baselines: baselinesFor(ledger, riderId, weekendId), course, conditions });
  const settings = settingsOnBike(ledger, mounted);
  const readings = benchReadings(mounted, settings, setup.bench);
  const rows = setup.rows.map((row): SheetRow => {
    const current = settings.get(row.path) ?? { state: "absent" };
    return { ...row, current, state: stateOf(row, current, readings[row.path], weekendId) };
  });
  return {
    ok: true,
    sheet: {
      mounted,
      programme: plan,
      session,
      setup,
      rows,
      sequence: sequenceOf(mounted, rows, readings, setup.bench),
    },
  };
}

/** The steps for the rows still to set, from what the bike reads at the bench; what was adjusted on purpose is left alone. */
function sequenceOf(
  mounted: RiderBike,
  rows: readonly SheetRow[],
  readings: SetupValues,
  bench: Surroundings,
): BenchSequence {
  const target: Partial<Record<AdjusterPath, TypedQuantity>> = {};
  for (const row of rows) if (row.state === "to set" && row.bench) target[row.path] = row.bench;
  return benchSequence(mounted, readings, target, { bench, pump: DEFAULT_PUMP });
}

/** `reading` is what the adjuster shows at the bench: a pressure that was set on a colder day is no longer what was typed. */
function stateOf(
  row: SetupRow,
  current: Current<Setting>,
  reading: TypedQuantity | undefined,
  weekendId: string,
): RowState {
  if (current.state === "disputed") return "disputed";
  const setting = settledValue(current);
  if (setting?.standing === "reported") return "reported";
  if (row.bench && reading && isSame(row, reading, row.bench)) return "set";
  if (setting && setting.weekend === weekendId && !isFromSheet(current)) return "adjusted";
  return row.bench ? "to set" : "no value";
}

/** Put on the bike because the sheet said so: then a new sheet may say otherwise. Going back to the baseline is a choice of its own. */
function isFromSheet(current: Current<Setting>): boolean {
  if (current.state !== "settled") return false;
  return current.heads.every((head) => {
    const type = head.cause?.type;
    return type === "conditions" || type === "setup" || type === "carry-over";
  });
}

function isSame({ found }: SetupRow, a: TypedQuantity, b: TypedQuantity): boolean {
  const { unit, step } = found.adjuster;
  return Math.abs(convert(a, unit).value - convert(b, unit).value) < step / 2;
}
