/** The disputes that somebody still has to settle. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { placesOf } from "#core/team/parts-on-bike.ts";
import { type Place, places } from "#core/team/place.ts";
import { mountingKind, sentBackKind } from "#core/team/record-kinds.ts";
import { allBikes, type RiderBike, riderBike } from "#core/team/roster.ts";
import { type Dispute, disputes } from "#core/weekend/disputes.ts";
import { standingSendBacks } from "./sent-back.ts";

/** A place of a bike of which different things were said: one part on two bikes, or two parts in one place. */
export interface PlaceInDispute {
  readonly kind: "place";
  /** Bike and place. */
  readonly key: string;
  readonly mounted: RiderBike;
  readonly place: Place;
}

export type OpenDispute = Dispute | PlaceInDispute;

/**
 * All open disputes, by kind and key; of notes to a setup only while they are about the setup on the bike. Where a part is
 * is told by the places where it may be: that is where somebody has to look.
 */
export function openDisputes(ledger: Ledger): readonly OpenDispute[] {
  const records = disputes(ledger).filter(
    (dispute) =>
      dispute.kind !== mountingKind.kind && (dispute.kind !== sentBackKind.kind || isStandingSendBack(ledger, dispute)),
  );
  return [...records, ...placesInDispute(ledger)];
}

/** Whether it is about a place rather than about one subject's records. */
export function isPlaceInDispute(dispute: OpenDispute): dispute is PlaceInDispute {
  return dispute.kind === "place" && "mounted" in dispute;
}

function placesInDispute(ledger: Ledger): readonly PlaceInDispute[] {
  return allBikes(ledger).flatMap((mounted) => {
    const on = placesOf(ledger, mounted.bikeId, mounted.bike);
    return places
      .filter((place) => on[place].state === "in dispute")
      .map((place) => ({ kind: "place" as const, key: `${mounted.bikeId}/${place}`, mounted, place }));
  });
}

function isStandingSendBack(ledger: Ledger, { key, claims }: Dispute): boolean {
  const mounted = riderBike(ledger, key.slice(0, key.indexOf("/")));
  const standing = mounted ? standingSendBacks(ledger, mounted).map(({ record }) => record.id) : [];
  return claims.some(({ id }) => standing.includes(id));
}
