/** A part that goes from one bike to another, as entries to write: where it is, and what it brings along. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { WithdrawEntry, WriteEntry } from "#core/ledger/write.ts";
import { type AdjusterPath, adjusterPath, dimensionOfKind } from "#core/team/adjuster.ts";
import type { Mounting } from "#core/team/mounting.ts";
import type { Part } from "#core/team/part.ts";
import { partsKeptAside, placesOf } from "#core/team/parts-on-bike.ts";
import type { Place } from "#core/team/place.ts";
import { causeOfProvenance } from "#core/team/provenance.ts";
import { mountingKind, partKind } from "#core/team/record-kinds.ts";
import { knownValue, type RiderBike, riderOnBike } from "#core/team/roster.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";

export interface PartMove {
  readonly partId: string;
  /** The bike that it is taken from; undefined when it was kept on none. */
  readonly from: string | undefined;
  /** The bike that it goes to; undefined when it is kept on none. */
  readonly to: string | undefined;
  /** The part that is at its place there goes where this one came from; otherwise it is kept on no bike. */
  readonly swap: boolean;
  /** True when its air stayed in it; false when the pressures were released, so that nobody knows them now. */
  readonly airKept: boolean;
}

export type MoveProblem =
  | { readonly type: "unknown part"; readonly partId: string }
  | { readonly type: "unknown bike"; readonly bikeId: string }
  | { readonly type: "same place" }
  /** The part is not where it is to be taken from, or somebody says something else. */
  | { readonly type: "not there"; readonly bikeId: string | undefined }
  /** Two people say different things of the place: somebody has to look first. */
  | { readonly type: "place in dispute"; readonly bikeId: string; readonly place: Place }
  /** Two people say different things of settings that would go along: somebody has to look first. */
  | { readonly type: "settings in dispute"; readonly bikeId: string; readonly paths: readonly AdjusterPath[] };

export type MoveResult =
  | { readonly ok: true; readonly entries: readonly (WriteEntry | WithdrawEntry)[] }
  | { readonly ok: false; readonly problem: MoveProblem };

/** Why nothing is known of an adjuster after a move, as the record keeps it; the cause beside it says the rest. */
const NOTHING_KNOWN = "part moved";

/**
 * One batch: the mountings first, so that each setting that follows counts as made on its new bike; then, for both bikes,
 * what the part that is there now was set to. What is not known of it is withdrawn: the value of the part that was there
 * before says nothing. A tyre loses its air with the change, whatever is said.
 */
export function movePart(ledger: Ledger, move: PartMove): MoveResult {
  const { partId, from, to } = move;
  const part = knownValue(ledger, partKind, partId);
  if (!part) return refused({ type: "unknown part", partId });
  if (from === to) return refused({ type: "same place" });
  const ends = { source: bikeOf(ledger, from), target: bikeOf(ledger, to) };
  for (const [bikeId, bike] of [
    [from, ends.source],
    [to, ends.target],
  ] as const) {
    if (bikeId !== undefined && !bike) return refused({ type: "unknown bike", bikeId });
  }
  const { source, target } = ends;
  const { place } = part;
  const at = source && placesOf(ledger, source.bikeId, source.bike)[place];
  const isThere = source
    ? at?.state === "mounted" && at.partId === partId
    : partsKeptAside(ledger).some((aside) => aside.partId === partId);
  if (!isThere) return refused({ type: "not there", bikeId: from });
  const there = target && placesOf(ledger, target.bikeId, target.bike)[place];
  if (target && there?.state === "in dispute") {
    return refused({ type: "place in dispute", bikeId: target.bikeId, place });
  }
  const other = there?.state === "mounted" ? there : undefined;
  const coming = { part, partId, bike: source, kept: move.airKept };
  const going = other && { part: other.part, partId: other.partId, bike: target, kept: move.airKept };
  for (const { bike, part: moved } of going ? [coming, going] : [coming]) {
    const paths = bike ? disputedPaths(ledger, bike, moved) : [];
    if (bike && paths.length > 0) return refused({ type: "settings in dispute", bikeId: bike.bikeId, paths });
  }
  const backTo = move.swap ? from : undefined;
  return {
    ok: true,
    entries: [
      mountingEntry(partId, { bike: to, from }),
      ...(going ? [mountingEntry(going.partId, { bike: backTo, from: to })] : []),
      ...(target ? settingsAfter(ledger, target, coming, going) : []),
      ...(source ? settingsAfter(ledger, source, move.swap ? going : undefined, coming) : []),
    ],
  };
}

interface MovedPart {
  readonly part: Part;
  readonly partId: string;
  readonly bike: RiderBike | undefined;
  readonly kept: boolean;
}

function refused(problem: MoveProblem): MoveResult {
  return { ok: false, problem };
}

function bikeOf(ledger: Ledger, bikeId: string | undefined): RiderBike | undefined {
  return bikeId === undefined ? undefined : riderOnBike(ledger, bikeId);
}

function mountingEntry(partId: string, { bike, from }: Mounting): WriteEntry {
  const value: Mounting = { ...(bike !== undefined && { bike }), ...(from !== undefined && { from }) };
  return { kind: mountingKind, key: partId, value };
}

function pathsOf(part: Part): readonly AdjusterPath[] {
  return part.adjusters.map(({ kind }) => adjusterPath(part.place, kind));
}

function disputedPaths(ledger: Ledger, { riderId, bikeId }: RiderBike, part: Part): readonly AdjusterPath[] {
  return pathsOf(part).filter(
    (path) => ledger.current(settingKind, settingKey(riderId, bikeId, path)).state === "disputed",
  );
}

/** What is set at a place of `bike` once `moved` is there, or nothing is; nothing is known of what it does not bring. */
function settingsAfter(
  ledger: Ledger,
  bike: RiderBike,
  moved: MovedPart | undefined,
  left: MovedPart | undefined,
): readonly (WriteEntry | WithdrawEntry)[] {
  const paths = new Set([left, moved].flatMap((of) => (of ? pathsOf(of.part) : [])));
  const named = moved ?? left;
  const cause = named && {
    cause: causeOfProvenance({
      type: "part moved",
      part: named.partId,
      ...(named.bike && { bike: named.bike.bikeId }),
    }),
  };
  return [...paths].map((path) => {
    const key = settingKey(bike.riderId, bike.bikeId, path);
    const setting = moved && broughtAlong(ledger, moved, path);
    return setting
      ? { kind: settingKind, key, value: setting, ...cause }
      : { kind: settingKind, key, voided: NOTHING_KNOWN, ...cause };
  });
}

function broughtAlong(ledger: Ledger, { part, bike, kept }: MovedPart, path: AdjusterPath): Setting | undefined {
  const adjuster = part.adjusters.find(({ kind }) => adjusterPath(part.place, kind) === path);
  if (!adjuster || !bike) return undefined;
  const isPressure = dimensionOfKind(adjuster.kind) === "pressure";
  if (isPressure && (!kept || part.archetype === "tyre")) return undefined;
  return settledValue(ledger.current(settingKind, settingKey(bike.riderId, bike.bikeId, path)));
}
