/** What a rider's screen that is locked against rain shows: what is on the bike, and how sure that is. */
import { common } from "#client/text/common.ts";
import type { LockedGroup } from "#client/widgets/rain-lock.tsx";
import type { PlaceView } from "./bike-view.ts";

export function lockedBike(places: readonly PlaceView[]): readonly LockedGroup[] {
  return places.map(({ place, adjusters }) => ({
    title: common.places[place],
    rows: adjusters.map(({ found, now, readAt, claims, standing }) => ({
      name: common.adjusters[found.adjuster.kind],
      value: now,
      lines: [readAt, ...claims, standing].filter((line) => line !== undefined),
    })),
  }));
}
