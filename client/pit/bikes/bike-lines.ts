/** The bikes of one rider, with what is on each, and all places that somebody has to look at. */
import { spareBike as words } from "#client/text/spare-bike.ts";
import { formatMoment } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { placesOf } from "#core/team/parts-on-bike.ts";
import { type Place, places } from "#core/team/place.ts";
import { allBikes, type RiderBike } from "#core/team/roster.ts";

export interface BikeLine {
  readonly bikeId: string;
  readonly name: string;
  readonly isRidden: boolean;
  /** A line for each place. */
  readonly parts: readonly string[];
}

/** A place of a bike that is in dispute, with what was said of it. */
export interface PlaceDispute {
  readonly id: string;
  readonly mounted: RiderBike;
  readonly place: Place;
  readonly claims: readonly PlaceClaim[];
}

export interface PlaceClaim {
  readonly partId: string;
  readonly name: string;
  /** Who said so, a sentence each. */
  readonly said: readonly string[];
}

/** The bikes of a rider by name; the one that he rides is marked. */
export function bikesOf(ledger: Ledger, riderId: string): readonly RiderBike[] {
  return allBikes(ledger).filter((mounted) => mounted.riderId === riderId);
}

/** A line for each of them. */
export function bikeLines(ledger: Ledger, riderId: string): readonly BikeLine[] {
  return bikesOf(ledger, riderId).map(({ bikeId, bike, rider }) => {
    const on = placesOf(ledger, bikeId, bike);
    return {
      bikeId,
      name: bike.name,
      isRidden: rider.bike === bikeId,
      parts: places.map((place) => {
        const at = on[place];
        if (at.state === "mounted") return words.part(place, at.part.name);
        return words.part(place, at.state === "empty" ? words.noPart : words.inDispute);
      }),
    };
  });
}

/** The places in dispute on these bikes. */
export function placeDisputes(ledger: Ledger, bikes: readonly RiderBike[]): readonly PlaceDispute[] {
  return bikes.flatMap((mounted) => {
    const on = placesOf(ledger, mounted.bikeId, mounted.bike);
    return places.flatMap((place): readonly PlaceDispute[] => {
      const at = on[place];
      if (at.state !== "in dispute") return [];
      const claims = at.claims.map(({ partId, part, records }) => ({
        partId,
        name: part.name,
        said:
          records.length === 0
            ? [words.disputes.entered(part.name)]
            : records.map(({ by, at: when }) =>
                words.disputes.says(part.name, memberName(ledger, by), formatMoment(when)),
              ),
      }));
      return [{ id: `${mounted.bikeId}/${place}`, mounted, place, claims }];
    });
  });
}
