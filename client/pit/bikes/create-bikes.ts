/** The bikes of the rider on this bench: which one is ridden, and places that are in dispute. */
import { type Accessor, createMemo } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { spareBike as words } from "#client/text/spare-bike.ts";
import { bikeName } from "#client/widgets/names.ts";
import type { Mounting } from "#core/team/mounting.ts";
import { mountingKind, riderKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { type BikeLine, bikeLines, bikesOf, type PlaceClaim, type PlaceDispute, placeDisputes } from "./bike-lines.ts";

export interface Bikes {
  readonly bikes: Accessor<readonly BikeLine[]>;
  readonly disputes: Accessor<readonly PlaceDispute[]>;
  /** The rider rides this bike from now on. */
  ride(bikeId: string): void;
  /** Somebody looked: the part is on that bike. */
  settle(dispute: PlaceDispute, claim: PlaceClaim): void;
  /** Somebody looked: the part is on no bike. */
  settleAside(dispute: PlaceDispute, claim: PlaceClaim): void;
}

export function createBikes({ device, acts }: Pick<RiderBench, "device" | "acts">, riderId: Accessor<string>): Bikes {
  /** Where those who moved it took it from: the same for all of them, or else nobody knows. */
  const takenFrom = (partId: string): string | undefined => {
    const from = new Set(
      device
        .ledger()
        .heads(mountingKind, partId)
        .map(({ value }) => value?.from),
    );
    return from.size === 1 ? [...from][0] : undefined;
  };
  const isDisputed = (partId: string): boolean => device.ledger().current(mountingKind, partId).state === "disputed";
  const foundAt = (partId: string, bike: string | undefined) => {
    const from = takenFrom(partId);
    const records = device
      .ledger()
      .heads(mountingKind, partId)
      .map(({ id }) => id);
    const value: Mounting = { ...(bike !== undefined && { bike }), ...(from !== undefined && { from }) };
    return { kind: mountingKind, key: partId, value, cause: { type: "resolution", records } } as const;
  };
  return {
    bikes: createMemo(() => bikeLines(device.ledger(), riderId())),
    disputes: createMemo(() => placeDisputes(device.ledger(), bikesOf(device.ledger(), riderId()))),
    ride: (bikeId) => {
      const rider = knownValue(device.ledger(), riderKind, riderId());
      if (!rider) return;
      const entry = {
        kind: riderKind,
        key: riderId(),
        value: { ...rider, bike: bikeId },
        cause: { type: "by hand" },
      } as const;
      acts.wrote(device.write([entry]), words.rides(rider.name, bikeName(device.ledger(), bikeId)));
    },
    settle: ({ mounted, claims }, claim) => {
      const { bikeId } = mounted;
      // Where else a part is that somebody else has put elsewhere, nobody has looked at: that stays to be settled.
      const others = claims.filter(({ partId }) => partId !== claim.partId && !isDisputed(partId));
      const entries = [
        foundAt(claim.partId, bikeId),
        ...others.map(({ partId }) => ({ ...foundAt(partId, undefined), value: { from: bikeId } })),
      ];
      acts.wrote(device.write(entries), words.disputes.settled(claim.name, mounted.bike.name));
    },
    settleAside: ({ mounted }, claim) => {
      const found = foundAt(claim.partId, undefined);
      const entry = { ...found, value: { from: found.value.from ?? mounted.bikeId } };
      acts.wrote(device.write([entry]), words.disputes.settledAside(claim.name));
    },
  };
}
