/** What is on the rider's bike now, adjuster by adjuster, with how sure that is. */
import { trackside } from "#client/text/trackside.ts";
import { entryField, numberIn } from "#client/widgets/entry-field.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import { type Current, type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { dimensionOf } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type Place, places } from "#core/team/place.ts";
import { type MountedAdjuster, mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import type { Setting } from "#core/weekend/setting.ts";

export interface AdjusterView {
  readonly path: AdjusterPath;
  readonly found: MountedAdjuster;
  /** As typed; absent while it is not known or in dispute. */
  readonly value: string | undefined;
  /** The same as the number that a field to type it starts from. */
  readonly number: number | undefined;
  /** Where a pressure was read: it shows more in the heat; absent for all else. */
  readonly readAt: string | undefined;
  /** A sentence when a mechanic has not confirmed it. */
  readonly standing: string | undefined;
  /** The value, or why there is none, in a few words. */
  readonly now: string;
  /** What each of those who disagree says. */
  readonly claims: readonly string[];
}

export interface PlaceView {
  readonly place: Place;
  readonly adjusters: readonly AdjusterView[];
}

/** The bike place by place; a place without a part is left out. */
export function bikeView(ledger: Ledger, mounted: RiderBike): readonly PlaceView[] {
  const settings = settingsOnBike(ledger, mounted);
  const all = mountedAdjusters(mounted.parts);
  return places.flatMap((place) => {
    const adjusters = all
      .filter((found) => found.place === place)
      .map((found) => adjusterView(ledger, found, settings.get(found.path) ?? { state: "absent" }));
    return adjusters.length > 0 ? [{ place, adjusters }] : [];
  });
}

function adjusterView(ledger: Ledger, found: MountedAdjuster, current: Current<Setting>): AdjusterView {
  const setting = settledValue(current);
  const value = setting && formatQuantity(setting.quantity);
  return {
    path: found.path,
    found,
    value,
    readAt:
      setting?.heldAt && dimensionOf(setting.quantity.unit) === "pressure"
        ? trackside.standing.readAt(formatQuantity(setting.heldAt.temperature))
        : undefined,
    now: value ?? (current.state === "disputed" ? trackside.standing.inDispute : trackside.standing.unknown),
    number: numberIn(entryField(found.adjuster), setting?.quantity),
    standing:
      current.state === "disputed"
        ? trackside.standing.disputed
        : setting?.standing === "reported"
          ? trackside.standing.reported
          : undefined,
    claims:
      current.state === "disputed"
        ? current.claims.map(({ value, by, at }) =>
            trackside.standing.says(
              value ? formatQuantity(value.quantity) : trackside.standing.unknown,
              memberName(ledger, by),
              formatMoment(at),
            ),
          )
        : [],
  };
}
