/** The versions of one baseline side by side, newest first, each marked with what differs from the one that it took the place of. */
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { bikeName, memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { type BaselineDifference, compareBaselines } from "#core/planning/baseline-review.ts";
import { type AdjusterPath, adjusterPaths } from "#core/team/adjuster.ts";
import type { Baseline } from "#core/team/baseline.ts";
import type { CourseType } from "#core/team/course-type.ts";
import { baselineKind } from "#core/team/record-kinds.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { programme } from "#core/weekend/programme.ts";
import { differenceInWords } from "./difference-in-words.ts";

export interface VersionValue {
  readonly path: AdjusterPath;
  readonly label: string;
  readonly value: string;
  /** How it differs from the version before, in words; absent when it does not. */
  readonly changed: string | undefined;
}

export interface VersionView {
  readonly record: LedgerRecord<Baseline>;
  readonly number: number;
  readonly standing: "current" | "in dispute" | "old" | "withdrawn";
  /** Who, when, at what temperature and so on: one line each. */
  readonly facts: readonly string[];
  readonly against: string;
  readonly values: readonly VersionValue[];
}

/** All versions of a rider's baseline for `type`, newest first. */
export function versionsView(ledger: Ledger, mounted: RiderBike, type: CourseType): readonly VersionView[] {
  const key = `${mounted.riderId}/${type}`;
  const history = ledger.history(baselineKind, key);
  const current = ledger.current(baselineKind, key);
  const heads = new Set(current.state === "absent" ? [] : current.heads.map(({ id }) => id));
  const paths = new Set(history.flatMap(({ value }) => Object.keys(value?.values ?? {}) as AdjusterPath[]));
  return history
    .map((record, index): VersionView => {
      const previous = history.findLastIndex(({ id, value }) => record.supersedes.includes(id) && value !== undefined);
      return {
        record,
        number: index + 1,
        standing: !record.value
          ? "withdrawn"
          : !heads.has(record.id)
            ? "old"
            : current.state === "disputed"
              ? "in dispute"
              : "current",
        facts: factsOf(ledger, mounted, record),
        against: previous < 0 ? review.versions.first : review.versions.against(previous + 1),
        values: record.value ? valuesOf(mounted, paths, history[previous]?.value, record.value) : [],
      };
    })
    .reverse();
}

/** A row for each adjuster that has a value in any version, so that the rows of all versions line up. */
function valuesOf(
  mounted: RiderBike,
  paths: ReadonlySet<AdjusterPath>,
  before: Baseline | undefined,
  after: Baseline,
): readonly VersionValue[] {
  const differences = new Map(compareBaselines(mounted, before, after).map((entry) => [entry.path, entry]));
  return adjusterPaths
    .filter((path) => paths.has(path))
    .map((path) => ({
      path,
      label: adjusterLabel(path),
      value: formatQuantity(after.values[path]),
      changed: changeInWords(path, differences.get(path), before, after),
    }));
}

function changeInWords(
  path: AdjusterPath,
  entry: BaselineDifference | undefined,
  before: Baseline | undefined,
  after: Baseline,
): string | undefined {
  if (!entry) return after.values[path] ? review.versions.notOnBike : undefined;
  if (!before) return undefined;
  const { baseline, onTheBike, difference } = entry;
  if (!baseline) return onTheBike ? review.versions.added : undefined;
  return onTheBike ? differenceInWords(difference) : review.versions.removed(formatQuantity(baseline));
}

function factsOf(ledger: Ledger, mounted: RiderBike, record: LedgerRecord<Baseline>): readonly string[] {
  const words = review.versions;
  const who = words.approvedBy(memberName(ledger, record.by), formatMoment(record.at));
  const { value } = record;
  if (!value) return [who, words.withdrawn(record.voided?.reason ?? "")];
  const weekend = value.weekend === undefined ? undefined : programme(ledger, value.weekend)?.weekend.name;
  const bike = bikeName(ledger, value.bike);
  return [
    who,
    ...whyOf(record),
    ...(weekend === undefined ? [] : [words.from(weekend)]),
    words.heldAt(formatQuantity(value.heldAt.temperature), formatQuantity(value.heldAt.altitude)),
    ...(value.ground === undefined ? [] : [words.ground(common.grounds[value.ground])]),
    words.mass(formatQuantity(value.mass)),
    ...sagOf(value),
    ...(value.bike === mounted.bikeId ? [] : [words.otherBike(bike)]),
    ...(value.note === undefined ? [] : [value.note]),
  ];
}

/** How it came about, where it was not simply approved or entered. */
function whyOf({ cause }: LedgerRecord<Baseline>): readonly string[] {
  switch (cause?.type) {
    case "revert":
      return [review.versions.undone];
    case "resolution":
      return [review.versions.kept];
    case "by hand":
      return cause.note === undefined ? [] : [cause.note];
    default:
      return [];
  }
}

function sagOf({ sag }: Baseline): readonly string[] {
  return (["fork", "shock"] as const).flatMap((place) => {
    const measured = sag?.[place];
    return measured ? [review.versions.sag(common.places[place], formatQuantity(measured))] : [];
  });
}
