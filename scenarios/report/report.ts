/** What came of a scenario, as plain data in the order in which people read it. Record ids are left out: they are chance. */
import { settledValue } from "#core/ledger/ledger.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { CourseType } from "#core/team/course-type.ts";
import { riderBikes } from "#core/team/roster.ts";
import type { Conditions } from "#core/weekend/conditions.ts";
import type { Course } from "#core/weekend/course.ts";
import { programme } from "#core/weekend/programme.ts";
import { courseKind } from "#core/weekend/record-kinds.ts";
import type { PlayedScenario } from "#scenarios/player/play-scenario.ts";
import { type ReportedAdjustment, reportAdjustments } from "./adjustment-report.ts";
import { type ReportedBaseline, reportBaselines } from "./baseline-report.ts";
import { type ReportedChange, reportChangelog } from "./changelog-report.ts";
import { type ReportedDisputes, reportDisputes } from "./dispute-report.ts";
import { createNaming } from "./naming.ts";
import { type ReportedRun, reportRuns } from "./run-report.ts";
import { type ReportedSheet, reportSheet } from "./sheet-report.ts";

export interface Report {
  readonly scenario: string;
  readonly weekend: string;
  readonly venue: string | undefined;
  readonly course: Course | undefined;
  readonly sessions: readonly ReportedSession[];
  readonly riders: readonly ReportedRider[];
  readonly disputes: ReportedDisputes;
  readonly devices: readonly { readonly device: string; readonly member: string; readonly records: number }[];
}

export interface ReportedSession {
  readonly session: string;
  readonly name: string;
  readonly startsAt: string;
  readonly conditions: Conditions | undefined;
}

export interface ReportedRider {
  readonly rider: string;
  readonly name: string;
  readonly bike: string;
  readonly mass: TypedQuantity;
  readonly sheet: ReportedSheet;
  readonly runs: readonly ReportedRun[];
  readonly adjustments: readonly ReportedAdjustment[];
  readonly changelog: readonly ReportedChange[];
  readonly baselines: Readonly<Record<CourseType, readonly ReportedBaseline[]>>;
}

/** The report, as any device with every rider's documents gives it: they all hold the same. */
export function reportOn({ scenario, devices, taken }: PlayedScenario): Report {
  const [device] = [...devices].sort((a, b) => b.documents.size - a.documents.size);
  if (device === undefined) throw new Error("A scenario was played without a device.");
  const { ledger } = device;
  const weekendId = scenario.weekend.id;
  const plan = programme(ledger, weekendId);
  if (plan === undefined) throw new Error(`The played scenario has no weekend "${weekendId}".`);
  const naming = createNaming(ledger, weekendId);
  const sheetFor = plan.sessions.findLast(({ conditions }) => conditions !== undefined) ?? plan.sessions.at(-1);
  return {
    scenario: scenario.name,
    weekend: plan.weekend.name,
    venue: plan.venue?.name,
    course: settledValue(ledger.current(courseKind, weekendId)),
    sessions: plan.sessions.map(({ id, session, conditions }) => ({
      session: id,
      name: session.name,
      startsAt: session.startsAt,
      conditions,
    })),
    riders: riderBikes(ledger).map((mounted) => ({
      rider: mounted.riderId,
      name: mounted.rider.name,
      bike: mounted.bike.name,
      mass: mounted.rider.mass,
      sheet: reportSheet(ledger, weekendId, sheetFor?.id ?? "", mounted.riderId),
      runs: reportRuns(ledger, naming, weekendId, mounted.riderId),
      adjustments: reportAdjustments(taken, naming, mounted.riderId),
      changelog: reportChangelog(ledger, naming, weekendId, mounted.riderId),
      baselines: reportBaselines(ledger, naming, mounted.riderId),
    })),
    disputes: reportDisputes(ledger, naming),
    devices: devices.map(({ id, member, ledger: own }) => ({
      device: id,
      member: naming.member(member),
      records: own.size,
    })),
  };
}
