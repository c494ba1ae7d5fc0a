/** What a team can look for in its records: riders, weekends, changes, runs and services, each with the words people wrote. */
import type { Ledger } from "#core/ledger/ledger.ts";
import type { Service } from "#core/service/service-record.ts";
import { knownValue, riderBikes } from "#core/team/roster.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";
import { weekends } from "#core/weekend/programme.ts";
import type { RaceWeekend } from "#core/weekend/race-weekend.ts";
import { runKind, venueKind } from "#core/weekend/record-kinds.ts";
import type { Run } from "#core/weekend/run.ts";
import { serviceKind } from "./service-kinds.ts";

export type Findable =
  | {
      readonly type: "rider";
      readonly riderId: string;
      readonly name: string;
      readonly plate: number | undefined;
      readonly bike: string;
    }
  | { readonly type: "weekend"; readonly weekendId: string; readonly weekend: RaceWeekend; readonly venue: string }
  | { readonly type: "change"; readonly riderId: string; readonly at: string; readonly change: Change }
  | { readonly type: "run"; readonly riderId: string; readonly at: string; readonly id: string; readonly run: Run }
  | {
      readonly type: "service";
      readonly riderId: string;
      readonly at: string;
      readonly id: string;
      readonly service: Service;
    };

/** Riders by name, then weekends, the latest first. */
export function findableNames(ledger: Ledger): readonly Findable[] {
  return [
    ...riderBikes(ledger).map(
      ({ riderId, rider, bike }): Findable => ({
        type: "rider",
        riderId,
        name: rider.name,
        plate: rider.plate,
        bike: bike.name,
      }),
    ),
    ...weekends(ledger).map(
      ({ id, weekend }): Findable => ({
        type: "weekend",
        weekendId: id,
        weekend,
        venue: knownValue(ledger, venueKind, weekend.venue)?.name ?? weekend.venue,
      }),
    ),
  ];
}

/** Changes, runs and services of one rider, newest first by the writers' clocks. */
export function findablesOfRider(ledger: Ledger, riderId: string): readonly Findable[] {
  const found = [
    ...changelog(ledger, { riderId }).map((change) => ({ type: "change" as const, riderId, at: change.at, change })),
    ...factsOf(ledger, runKind, riderId).map(({ id, at, value }) => ({
      type: "run" as const,
      riderId,
      at,
      id,
      run: value,
    })),
    ...factsOf(ledger, serviceKind, riderId).map(({ id, at, value }) => ({
      type: "service" as const,
      riderId,
      at,
      id,
      service: value,
    })),
  ];
  return found.sort((a, b) => (a.at < b.at ? 1 : a.at > b.at ? -1 : 0));
}

function factsOf<Value>(ledger: Ledger, kind: Parameters<typeof knownValue<Value>>[1], riderId: string) {
  return ledger.keys(kind, riderId).flatMap((key) => {
    const value = knownValue(ledger, kind, key);
    const first = ledger.history(kind, key)[0];
    return value !== undefined && first ? [{ id: key.slice(riderId.length + 1), at: first.at, value }] : [];
  });
}
