/** A part that is to be moved, as it is chosen on the screen, and as what is asked of the records. */
import { spareBike } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { bikeName, partName } from "#client/widgets/names.ts";
import type { SelectOption } from "#client/widgets/option-select.tsx";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { MoveProblem } from "#core/planning/move-part.ts";
import { dimensionOfKind } from "#core/team/adjuster.ts";
import type { Part } from "#core/team/part.ts";
import { partsKeptAside, placesOf } from "#core/team/parts-on-bike.ts";
import { type Place, places } from "#core/team/place.ts";
import { partKind } from "#core/team/record-kinds.ts";
import { allBikes, knownValue } from "#core/team/roster.ts";
import { bikesOf } from "./bike-lines.ts";

/** Stands for "on no bike" among the bikes to choose from; no identifier looks like it. */
export const ASIDE = "~";

export const swaps = ["swap", "aside"] as const;
export type Swap = (typeof swaps)[number];
export const airs = ["kept", "released"] as const;
export type Air = (typeof airs)[number];

export interface MoveDraft {
  readonly partId: string | undefined;
  /** A bike, or {@link ASIDE}. */
  readonly to: string | undefined;
  readonly swap: Swap;
  readonly air: Air | undefined;
}

/** A part that can be moved from here: on a bike of this rider, or kept on none. */
export interface MovablePart {
  readonly partId: string;
  readonly part: Part;
  readonly bikeId: string | undefined;
  readonly label: string;
}

/** The parts on a rider's bikes, then those kept aside. */
export function movableParts(ledger: Ledger, riderId: string): readonly MovablePart[] {
  const words = spareBike.move;
  const mounted = bikesOf(ledger, riderId).flatMap(({ bikeId, bike }) => {
    const on = placesOf(ledger, bikeId, bike);
    return places.flatMap((place): readonly MovablePart[] => {
      const at = on[place];
      if (at.state !== "mounted") return [];
      const label = words.option(spareBike.part(place, at.part.name), bike.name);
      return [{ partId: at.partId, part: at.part, bikeId, label }];
    });
  });
  const aside = partsKeptAside(ledger).map(({ partId, part }) => ({
    partId,
    part,
    bikeId: undefined,
    label: words.optionAside(spareBike.part(part.place, part.name)),
  }));
  return [...mounted, ...aside];
}

/** Where a part can go: every other bike of the team, those of its rider first, or no bike. */
export function placesToGo(ledger: Ledger, moved: MovablePart, riderId: string): readonly SelectOption[] {
  const words = spareBike.move;
  const bikes = allBikes(ledger)
    .filter(({ bikeId }) => bikeId !== moved.bikeId)
    .sort((a, b) => Number(b.riderId === riderId) - Number(a.riderId === riderId))
    .map(({ bikeId, bike, rider }) => ({ id: bikeId, label: spareBike.copy.bike(bike.name, rider.name) }));
  return moved.bikeId === undefined ? bikes : [...bikes, { id: ASIDE, label: words.aside }];
}

/** The part that is at the place there now, if one is. */
export function partThere(ledger: Ledger, to: string | undefined, place: Place): string | undefined {
  const found = allBikes(ledger).find(({ bikeId }) => bikeId === to);
  const at = found && placesOf(ledger, found.bikeId, found.bike)[place];
  return at?.state === "mounted" ? at.partId : undefined;
}

/** True where it has to be said whether the air stayed in one of the parts that move. */
export function asksForAir(ledger: Ledger, partIds: readonly (string | undefined)[]): boolean {
  return partIds.some((id) => {
    const part = id === undefined ? undefined : knownValue(ledger, partKind, id);
    return part && part.archetype !== "tyre" && part.adjusters.some(({ kind }) => dimensionOfKind(kind) === "pressure");
  });
}

/** Why a move is refused, in a sentence. */
export function moveProblemText(ledger: Ledger, problem: MoveProblem): string {
  const words = spareBike.move.problems;
  switch (problem.type) {
    case "unknown part":
      return words.unknownPart;
    case "unknown bike":
      return words.unknownBike;
    case "same place":
      return words.samePlace;
    case "not there":
      return words.notThere;
    case "place in dispute":
      return words.placeInDispute(problem.place, bikeName(ledger, problem.bikeId));
    case "settings in dispute":
      return words.settingsInDispute(bikeName(ledger, problem.bikeId), problem.paths.map(trade.adjuster).join(", "));
  }
}

/** What was moved where, in a sentence. */
export function movedText(ledger: Ledger, partId: string, to: string | undefined): string {
  const words = spareBike.move;
  const part = partName(ledger, partId);
  return to === undefined ? words.doneAside(part) : words.done(part, bikeName(ledger, to));
}
