/** A report as plain text. */
import { nameOfPath } from "#core/advice/adjuster-names.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { describeQuantity } from "#core/team/quantity-schema.ts";
import type { ReportedAdjustment } from "./adjustment-report.ts";
import type { ReportedChange } from "./changelog-report.ts";
import type { ReportedClaim, ReportedDisputes } from "./dispute-report.ts";
import type { Report, ReportedRider } from "./report.ts";
import type { ReportedSheet } from "./sheet-report.ts";
import { alignColumns } from "./text-table.ts";

/** The whole report, with a line break at the end. */
export function reportText(report: Report): string {
  const lines = [
    ...headOf(report),
    ...report.riders.flatMap(riderLines),
    ...disputeLines(report.disputes),
    "",
    "DEVICES, all with the same records",
    ...alignColumns(
      report.devices.map(({ device, member, records }) => [device, member, `${records} records`]),
      "  ",
    ),
  ];
  return `${lines.join("\n")}\n`;
}

function headOf({ scenario, weekend, venue, course, sessions }: Report): readonly string[] {
  const mix = course && courseTypes.map((type) => `${type} ${course.mix[type]}`).join(", ");
  return [
    scenario.toUpperCase(),
    `${weekend}${venue === undefined ? "" : `, ${venue}`}`,
    "Sessions are in the venue's time; runs and changes in UTC, by the clock of the device that wrote them.",
    course ? `Course: ${mix}; at ${describeQuantity(course.altitude)}` : "Course: not entered",
    ...alignColumns(
      sessions.map(({ name, startsAt, conditions }) => [
        name,
        startsAt.replace("T", " "),
        conditions ? `air ${describeQuantity(conditions.air)}` : "conditions not entered",
        conditions?.bench ? `bench ${describeQuantity(conditions.bench)}` : "",
        conditions?.ground ?? "",
      ]),
      "  ",
    ),
  ];
}

function riderLines(rider: ReportedRider): readonly string[] {
  const { name, mass, sheet, runs, adjustments, changelog, baselines } = rider;
  return [
    "",
    `${name.toUpperCase()}, ${describeQuantity(mass)}`,
    ...sheetLines(sheet),
    ...titled(
      "Runs",
      runs.map(({ run, at, by, decision }) => [run, clock(at), by, decision ?? "not decided"]),
    ),
    ...adjustments.flatMap(adjustmentLines),
    ...titled("Changelog", changelog.map(changeCells)),
    ...titled(
      "Baselines with more than one version",
      courseTypes.flatMap((type) => {
        const versions = baselines[type];
        return versions.length < 2
          ? []
          : versions.map(({ at, by, current }) => [type, clock(at), by, current ? "current" : "kept"]);
      }),
    ),
  ];
}

function sheetLines(sheet: ReportedSheet): readonly string[] {
  if ("problem" in sheet) return [`  No setup sheet: ${sheet.problem}`];
  const head = ["adjuster", "baseline", "weekend", "difference", "bench", "on the bike", "state"];
  const rows = sheet.rows.map(({ adjuster, baseline, weekend, difference, bench, onTheBike, state }) => [
    nameOfPath(adjuster),
    shown(baseline),
    shown(weekend),
    signed(difference),
    shown(bench),
    onTheBike.map(describeQuantity).join(" or ") || "-",
    state,
  ]);
  const reasons = sheet.rows.flatMap(({ adjuster, reasons: because, problems }) => [
    ...because.map(({ sentence, provenance, change, refused }) => [
      nameOfPath(adjuster),
      signed(change),
      `[${provenance}]`,
      refused === undefined ? sentence : `${sentence} Not done: ${refused}`,
    ]),
    ...problems.map((problem) => [nameOfPath(adjuster), "-", "[limit]", problem]),
  ]);
  const fitted = sheet.fitted ? "fitted to measured sag" : "not fitted: direction and rough size only";
  return [
    `  Setup sheet for ${sheet.session} (${fitted})`,
    ...alignColumns([head, ...rows], "    "),
    ...titled("Reasons", reasons),
  ];
}

function adjustmentLines({ run, rule, setting, before, after }: ReportedAdjustment): readonly string[] {
  const cells = [
    ["sag", millimetres(before?.sagMm), millimetres(after?.sagMm)],
    ["travel used by the same hit", strokeOf(before), strokeOf(after)],
    ["force at nine tenths", newtons(before?.forceAtNineTenthsN), newtons(after?.forceAtNineTenthsN)],
  ].filter(([, from, to]) => from !== "-" || to !== "-");
  const move = `${nameOfPath(setting.path)} ${describeQuantity(setting.from)} -> ${describeQuantity(setting.to)}`;
  return [
    `  Taken for ${run} by the rule ${rule}: ${move}`,
    ...alignColumns(
      cells.map(([what = "", from = "", to = ""]) => [what, from, "->", to]),
      "    ",
    ),
  ];
}

function changeCells({ at, by, adjuster, from, to, standing, why, run }: ReportedChange): readonly string[] {
  const value = `${from.map(describeQuantity).join(" or ") || "-"} -> ${to ? describeQuantity(to) : "withdrawn"}`;
  const told = standing === "reported" ? `${why} Not confirmed.` : why;
  return [clock(at), by, nameOfPath(adjuster), value, run ?? "", told];
}

function disputeLines({ open, resolved }: ReportedDisputes): readonly string[] {
  const claim = ({ value, by, device, at }: ReportedClaim): readonly string[] => [shown(value), by, device, clock(at)];
  return [
    "",
    `DISPUTES: ${open.length} open, ${resolved.length} resolved`,
    ...open.flatMap(({ about, claims }) => [`  Open: ${about}`, ...alignColumns(claims.map(claim), "    ")]),
    ...resolved.flatMap(({ about, claims, found, resolvedBy, resolvedAt }) => [
      `  Resolved: ${about}; found ${shown(found)}, by ${resolvedBy}, ${clock(resolvedAt)}`,
      ...alignColumns(claims.map(claim), "    "),
    ]),
  ];
}

function titled(title: string, rows: readonly (readonly string[])[]): readonly string[] {
  return rows.length === 0 ? [] : [`  ${title}`, ...alignColumns(rows, "    ")];
}

/** "2026-06-12 06:31", in UTC. */
function clock(at: string): string {
  return at.slice(0, 16).replace("T", " ");
}

function shown(quantity: TypedQuantity | undefined): string {
  return quantity ? describeQuantity(quantity) : "-";
}

function signed(quantity: TypedQuantity | undefined): string {
  return quantity ? `${quantity.value > 0 ? "+" : ""}${describeQuantity(quantity)}` : "-";
}

function millimetres(value: number | undefined): string {
  return value === undefined ? "-" : `${value} mm`;
}

function newtons(value: number | undefined): string {
  return value === undefined ? "-" : `${value} N`;
}

function strokeOf(prediction: ReportedAdjustment["before"]): string {
  return prediction?.bottomsOut ? "all, bottoms out" : millimetres(prediction?.strokeUsedMm);
}
