/**
 * Which part is at each place of a bike. A part that was moved is where its mounting says, any other where the data of a
 * bike have it. Where two people said different things, nobody knows until somebody has looked: then the place has claims
 * and no part.
 */
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { Bike } from "./bike.ts";
import { knownValue } from "./known-value.ts";
import type { Mounting } from "./mounting.ts";
import type { Part } from "./part.ts";
import { type Place, places } from "./place.ts";
import { bikeKind, mountingKind, partKind } from "./record-kinds.ts";

/** A part that somebody says is at a place. */
export interface PartClaim {
  readonly partId: string;
  readonly part: Part;
  /** Who says so: the mountings that put it there; empty where it is there by the data of the bike. */
  readonly records: readonly LedgerRecord<Mounting>[];
}

export type PlaceState =
  | { readonly state: "mounted"; readonly partId: string; readonly part: Part }
  | { readonly state: "empty" }
  /** One part that may be elsewhere, or several that cannot all be here. */
  | { readonly state: "in dispute"; readonly claims: readonly PartClaim[] };

/** What is at each place of a bike. */
export function placesOf(ledger: Ledger, bikeId: string, bike: Bike): Readonly<Record<Place, PlaceState>> {
  const moved = ledger.keys(mountingKind);
  return Object.fromEntries(places.map((place) => [place, placeOf(ledger, bikeId, bike, place, moved)])) as Record<
    Place,
    PlaceState
  >;
}

function placeOf(ledger: Ledger, bikeId: string, bike: Bike, place: Place, moved: readonly string[]): PlaceState {
  const claims: PartClaim[] = [];
  let isSure = true;
  for (const partId of new Set([...moved, ...(bike.parts[place] === undefined ? [] : [bike.parts[place]])])) {
    const part = knownValue(ledger, partKind, partId);
    if (part?.place !== place) continue;
    const current = ledger.current(mountingKind, partId);
    const isEnteredHere = bike.parts[place] === partId;
    if (current.state === "absent") {
      if (isEnteredHere) claims.push({ partId, part, records: [] });
      continue;
    }
    // Who took a move back says that the part is where the bike's data have it.
    const here = current.heads.filter(({ value, voided }) => (voided ? isEnteredHere : value?.bike === bikeId));
    if (here.length === 0) continue;
    claims.push({ partId, part, records: here });
    if (current.state === "disputed") isSure = false;
  }
  const [first] = claims;
  if (!first) return { state: "empty" };
  if (isSure && claims.length === 1) return { state: "mounted", partId: first.partId, part: first.part };
  return { state: "in dispute", claims };
}

/** The parts that are on no bike, with those whose place is in dispute left out; by id. */
export function partsKeptAside(ledger: Ledger): readonly PartClaim[] {
  const entered = new Set(
    ledger.keys(bikeKind).flatMap((id) => Object.values(knownValue(ledger, bikeKind, id)?.parts ?? {})),
  );
  return ledger.keys(partKind).flatMap((partId): readonly PartClaim[] => {
    const part = knownValue(ledger, partKind, partId);
    const current = ledger.current(mountingKind, partId);
    if (!part || current.state === "disputed") return [];
    const isAside = current.state === "absent" ? !entered.has(partId) : current.value.bike === undefined;
    return isAside ? [{ partId, part, records: current.state === "absent" ? [] : current.heads }] : [];
  });
}
