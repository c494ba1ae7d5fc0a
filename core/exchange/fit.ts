/** Whether a value that comes in fits the team as it will be: the names that it uses lead somewhere, and the bike can have it. */
import { checkSetup, checkValue, type LimitProblem } from "#core/advice/limits.ts";
import type { RecordKind } from "#core/ledger/kind.ts";
import { serviceKind } from "#core/planning/service-kinds.ts";
import type { Service } from "#core/service/service-record.ts";
import { adjusterPaths } from "#core/team/adjuster.ts";
import type { Baseline, SetupValues } from "#core/team/baseline.ts";
import type { Bike } from "#core/team/bike.ts";
import type { Mounting } from "#core/team/mounting.ts";
import type { Part } from "#core/team/part.ts";
import type { Member, Rider } from "#core/team/people.ts";
import { type Place, places } from "#core/team/place.ts";
import { baselineKind, bikeKind, memberKind, mountingKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { parseSettingKey, settingKey } from "#core/weekend/on-the-bike.ts";
import type { RaceWeekend } from "#core/weekend/race-weekend.ts";
import {
  conditionsKind,
  courseKind,
  decisionKind,
  noRunKind,
  runKind,
  sessionKind,
  settingKind,
  venueKind,
  weekendKind,
} from "#core/weekend/record-kinds.ts";
import type { Run } from "#core/weekend/run.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { RowRefusal } from "./row-refusal.ts";

/** A subject's value as it will be, or undefined when there will be none. */
export type ValueLookup = <Value>(kind: RecordKind<Value>, key: string) => Value | undefined;

interface Subject {
  readonly kind: RecordKind;
  readonly key: string;
  readonly value: unknown;
}

/**
 * Why the value does not fit; undefined when it does.
 * @param moved the parts that have a mounting, here or in the file
 */
export function fitProblem(subject: Subject, lookup: ValueLookup, moved: readonly string[]): RowRefusal | undefined {
  for (const [kind, key] of namedBy(subject)) {
    if (key !== undefined && lookup(kind, key) === undefined) {
      return { type: "nothing to lean on", kind: kind.kind, key };
    }
  }
  const [first = "", second = ""] = subject.key.split("/");
  switch (subject.kind.kind) {
    case baselineKind.kind: {
      const { bike, values } = subject.value as Baseline;
      const [problem] = checkSetup(bikeAsItWillBe(lookup, bike, moved), values);
      // It may be older than the last move: then it was found with the parts that the bike was entered with.
      if (problem && checkSetup(bikeAsItWillBe(lookup, bike, []), values).length === 0) return undefined;
      return limitRefusal(problem);
    }
    case settingKind.kind:
      return settingProblem(subject, second, lookup, moved);
    case riderKind.kind: {
      const { bike } = subject.value as Rider;
      const owner = lookup(bikeKind, bike)?.rider ?? "";
      return owner === first ? undefined : { type: "bike of another", bike, owner };
    }
    case bikeKind.kind: {
      const { parts } = subject.value as Bike;
      for (const place of places) {
        const id = parts[place];
        const part = id === undefined ? undefined : lookup(partKind, id);
        if (id !== undefined && part && part.place !== place) {
          return { type: "part of another place", part: id, place: part.place, given: place };
        }
      }
      return undefined;
    }
    default:
      return undefined;
  }
}

function settingProblem(
  subject: Subject,
  bikeId: string,
  lookup: ValueLookup,
  moved: readonly string[],
): RowRefusal | undefined {
  const address = parseSettingKey(subject.key);
  if (!address) return { type: "no setting's key" };
  const onTheBike: Partial<Record<string, Setting["quantity"]>> = {};
  for (const path of adjusterPaths) {
    const quantity = lookup(settingKind, settingKey(address.riderId, bikeId, path))?.quantity;
    if (quantity) onTheBike[path] = quantity;
  }
  const { quantity } = subject.value as Setting;
  const problem = checkValue(bikeAsItWillBe(lookup, bikeId, moved), address.path, quantity, onTheBike as SetupValues);
  return limitRefusal(problem);
}

function limitRefusal(problem: LimitProblem | undefined): RowRefusal | undefined {
  return problem && { type: "limit", problem };
}

function bikeAsItWillBe(
  lookup: ValueLookup,
  bikeId: string,
  moved: readonly string[],
): { bike: Bike; parts: Partial<Record<Place, Part>> } {
  const bike = lookup(bikeKind, bikeId);
  if (!bike) throw new Error(`The bike ${bikeId} was looked for before, and was there.`);
  const parts: Partial<Record<Place, Part>> = {};
  for (const place of places) {
    const entered = bike.parts[place];
    const here = moved.filter((id) => lookup(mountingKind, id)?.bike === bikeId);
    const isAway = entered !== undefined && moved.includes(entered) && lookup(mountingKind, entered) !== undefined;
    const ids = entered === undefined || isAway ? here : [entered, ...here];
    const part = ids.map((id) => lookup(partKind, id)).find((candidate) => candidate?.place === place);
    if (part) parts[place] = part;
  }
  return { bike, parts };
}

type Named = readonly [RecordKind, string | undefined];

/** The subjects that a value leans on. */
function namedBy({ kind, key, value }: Subject): readonly Named[] {
  const [first, second] = key.split("/");
  const weekend: Named = [weekendKind, first];
  switch (kind.kind) {
    case memberKind.kind:
      return [[riderKind, (value as Member).rider]];
    case riderKind.kind:
      return [[bikeKind, (value as Rider).bike]];
    case bikeKind.kind:
      return [
        [riderKind, (value as Bike).rider],
        ...places.map((place): Named => [partKind, (value as Bike).parts[place]]),
      ];
    case mountingKind.kind: {
      const { bike, from } = value as Mounting;
      return [
        [partKind, first],
        [bikeKind, bike],
        [bikeKind, from],
      ];
    }
    case baselineKind.kind:
      return [
        [riderKind, first],
        [bikeKind, (value as Baseline).bike],
      ];
    case weekendKind.kind:
      return [[venueKind, (value as RaceWeekend).venue]];
    case courseKind.kind:
    case sessionKind.kind:
      return [weekend];
    case conditionsKind.kind:
      return [weekend, [sessionKind, key]];
    case settingKind.kind:
      return [
        [riderKind, first],
        [bikeKind, second],
      ];
    case runKind.kind: {
      const run = value as Run;
      return [
        [riderKind, first],
        [bikeKind, run.bike],
        [weekendKind, run.weekend],
        [sessionKind, `${run.weekend}/${run.session}`],
      ];
    }
    case decisionKind.kind:
      return [[runKind, key]];
    case noRunKind.kind:
      return [
        [riderKind, first],
        [sessionKind, key.slice(key.indexOf("/") + 1)],
      ];
    case serviceKind.kind:
      return [
        [riderKind, first],
        [bikeKind, (value as Service).bike],
      ];
    default:
      return [];
  }
}
