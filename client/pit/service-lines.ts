/** How service stands on a bike, in words. */
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatMoment, formatNumber, formatQuantity } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { PartServiceStatus } from "#core/planning/service-status.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { DoneService, WorkStatus } from "#core/service/part-service.ts";
import type { ServicePlan } from "#core/service/service-plan.ts";
import type { Remaining, ServiceState } from "#core/service/service-state.ts";
import type { ServiceWork } from "#core/service/service-work.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { grounds } from "#core/team/ground.ts";

export type ServicePlace = PartServiceStatus["place"];

export interface WorkLine {
  readonly work: ServiceWork;
  readonly name: string;
  readonly used: string;
  readonly limit: string;
  readonly state: ServiceState;
  readonly stateText: string;
  readonly left: string;
  readonly last: LastLine | undefined;
}

export interface LastLine {
  readonly sentence: string;
  readonly hoursBefore: string | undefined;
  readonly note: string | undefined;
  /** What was on the bike, a line for each setting. */
  readonly settings: readonly string[];
}

export interface ServicePartLine {
  readonly place: ServicePlace;
  /** "Fork". */
  readonly title: string;
  /** The part's own name. */
  readonly name: string;
  readonly state: ServiceState;
  readonly works: readonly WorkLine[];
}

/** The name of a work: "Bath oil of the lower legs". */
export function workName(place: ServicePlace, work: ServiceWork): string {
  return pit.service.works[place][work];
}

/** A line for each part, with its works. */
export function servicePartLines(ledger: Ledger, parts: readonly PartServiceStatus[]): readonly ServicePartLine[] {
  return parts.map(({ place, part, state, works }) => ({
    place,
    title: common.places[place],
    name: part.name,
    state,
    works: works.map((status) => workLine(ledger, place, status)),
  }));
}

/** A line for each setting: "Fork main pressure: 62 psi". */
export function settingLines(settings: SetupValues): readonly string[] {
  return (Object.entries(settings) as [AdjusterPath, TypedQuantity][]).map(([path, quantity]) =>
    pit.service.setting(trade.adjuster(path), formatQuantity(quantity)),
  );
}

/** How the hours come about, one sentence each. */
export function countingLines({ weights, minutesPerRun, dueFrom }: ServicePlan): readonly string[] {
  const { service } = pit;
  const listed = grounds.map((ground) => service.weight(common.grounds[ground], formatNumber(weights[ground])));
  return [
    service.countingRuns(formatNumber(minutesPerRun)),
    service.countingGround(listed.join(", ")),
    service.countingLeft(formatNumber(minutesPerRun)),
    service.countingDue(formatNumber(dueFrom * 100)),
    service.countingSource,
  ];
}

/** One work of a part in words. */
export function workLine(ledger: Ledger, place: ServicePlace, status: WorkStatus): WorkLine {
  const { work, usedHours, limitHours, state, last } = status;
  return {
    work,
    name: workName(place, work),
    used: pit.service.hours(formatNumber(toTenths(usedHours))),
    limit: pit.service.limit(formatNumber(limitHours)),
    state,
    stateText: pit.service.states[state],
    left: leftText(status),
    last: last && lastLine(ledger, place, last),
  };
}

function leftText({ state, untilDue, untilLimit }: WorkStatus): string {
  const { service } = pit;
  switch (state) {
    case "in use":
      return untilDue.runs === 0 ? service.dueNext : service.untilDue(remainingText(untilDue));
    case "due":
      return untilLimit.runs === 0 ? service.overNext : service.untilLimit(remainingText(untilLimit));
    case "overdue":
      return service.over;
  }
}

function remainingText({ runs, sessions }: Remaining): string {
  const text = pit.service.runs(runs);
  return sessions === undefined ? text : pit.service.runsAndSessions(text, sessions);
}

function lastLine(ledger: Ledger, place: ServicePlace, { at, by, service }: DoneService): LastLine {
  const { what, hoursBefore, note, settings } = service;
  return {
    sentence: pit.service.lastDone(workName(place, what), memberName(ledger, by), formatMoment(at)),
    hoursBefore: hoursBefore === undefined ? undefined : pit.service.hoursBefore(formatNumber(hoursBefore)),
    note,
    settings: settingLines(settings),
  };
}

/** Downwards, so that 49.96 h do not read as the 50 h that they have not reached. */
function toTenths(hours: number): number {
  return Math.floor(hours * 10 + 1e-6) / 10;
}
