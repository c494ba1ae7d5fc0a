/** What was on a bike at a moment of its changelog, and how two moments differ. */
import { type Current, judgeHeads } from "#core/ledger/current.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { traceSupersession } from "#core/ledger/supersession.ts";
import { convert, type TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type MountedAdjuster, mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";
import { settingKey, settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { benchReadings } from "./bench-readings.ts";

/** A place in the order of the changelog, which goes by the writers' clocks and then by id. */
type Place = Pick<Change, "at" | "id">;

/** - "before": just before a change; "after": when it had been made; "now": with all that is here. */
export type Moment =
  | { readonly is: "before"; readonly change: Place }
  | { readonly is: "after"; readonly change: Place }
  | { readonly is: "now" };

/** The changes of one bike that were made together, newest first as in the changelog. */
export interface MadeTogether {
  readonly changes: readonly [Change, ...Change[]];
  /** When all of them had been made. */
  readonly moment: Moment;
}

/** Every moment at which something had been changed on the bike, newest first. */
export function momentsOf(ledger: Ledger, { riderId, bikeId }: RiderBike): readonly MadeTogether[] {
  const together: [Change, ...Change[]][] = [];
  for (const change of changelog(ledger, { riderId }).filter((candidate) => candidate.bikeId === bikeId)) {
    const last = together.at(-1);
    if (last && change.batch !== undefined && last[0].batch === change.batch) last.push(change);
    else together.push([change]);
  }
  return together.map((changes) => ({ changes, moment: { is: "after", change: changes[0] } }));
}

/** Just before the first change that was made for a weekend; now, while nothing was. */
export function beforeWeekend(moments: readonly MadeTogether[], weekendId: string): Moment {
  const first = moments.flatMap(({ changes }) => changes).findLast(({ weekend }) => weekend === weekendId);
  return first ? { is: "before", change: first } : { is: "now" };
}

/**
 * What was on the bike, adjuster by adjuster, as far as the records that are here tell: of those that were written until
 * then the ones that none of them supersedes. A clock decides only what "then" is, never what holds now; where devices'
 * clocks differ, a moment is as exact as they are.
 */
export function settingsAt(
  ledger: Ledger,
  mounted: RiderBike,
  moment: Moment,
): ReadonlyMap<AdjusterPath, Current<Setting>> {
  if (moment.is === "now") return settingsOnBike(ledger, mounted);
  return new Map(
    mountedAdjusters(mounted.parts).map(({ path }): [AdjusterPath, Current<Setting>] => {
      const history = ledger.history(settingKind, settingKey(mounted.riderId, mounted.bikeId, path));
      const until = new Map(history.filter((record) => isUntil(record, moment)).map((record) => [record.id, record]));
      return [path, judgeHeads(settingKind, traceSupersession(until).heads, until)];
    }),
  );
}

function isUntil({ at, id }: Place, { is, change }: Exclude<Moment, { is: "now" }>): boolean {
  if (at !== change.at) return at < change.at;
  return is === "after" ? id <= change.id : id < change.id;
}

export interface MomentDifference {
  readonly found: MountedAdjuster;
  readonly path: AdjusterPath;
  /** "unknown": nothing had been written; "disputed": two people said different things. */
  readonly earlier: TypedQuantity | "unknown" | "disputed";
  readonly later: TypedQuantity | "unknown" | "disputed";
  /** Later less earlier, in the adjuster's unit; absent where one of the two is no value. */
  readonly difference: TypedQuantity | undefined;
}

/**
 * What differs between two states of a bike, in the order of its adjusters. With `bench`, pressures are compared as they
 * read there, since the same air reads differently in the cold; without, as they were typed. Less than half a step of the
 * adjuster is no difference.
 */
export function differencesBetween(
  mounted: RiderBike,
  then: ReadonlyMap<AdjusterPath, Current<Setting>>,
  later: ReadonlyMap<AdjusterPath, Current<Setting>>,
  bench?: Surroundings,
): readonly MomentDifference[] {
  const stateIn = (settings: ReadonlyMap<AdjusterPath, Current<Setting>>) => {
    const readings = bench && benchReadings(mounted, settings, bench);
    return (path: AdjusterPath): MomentDifference["earlier"] => {
      const current = settings.get(path);
      if (current?.state === "disputed") return "disputed";
      return readings?.[path] ?? (current && settledValue(current)?.quantity) ?? "unknown";
    };
  };
  const [stateThen, stateLater] = [stateIn(then), stateIn(later)];
  return mountedAdjusters(mounted.parts).flatMap((found): readonly MomentDifference[] => {
    const { path, adjuster } = found;
    const [before, after] = [stateThen(path), stateLater(path)];
    if (typeof before === "string" || typeof after === "string") {
      return before === after ? [] : [{ found, path, earlier: before, later: after, difference: undefined }];
    }
    const off = convert(after, adjuster.unit).value - convert(before, adjuster.unit).value;
    if (Math.abs(off) < adjuster.step / 2) return [];
    return [{ found, path, earlier: before, later: after, difference: { value: off, unit: adjuster.unit } }];
  });
}
