/** What the other bike's spring would have to be set to for the same share of its stroke as sag. */
import { checkValue, settable } from "#core/advice/limits.ts";
import { valueForSag } from "#core/advice/sizing.ts";
import { suspensionModel } from "#core/advice/suspension-model.ts";
import { ISOTHERMAL } from "#core/physics/gas.ts";
import { staticSag } from "#core/physics/sag.ts";
import { metres } from "#core/quantity/quantity.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { type AdjusterPath, adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type End, suspensionOf } from "#core/team/place.ts";
import { mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";

/** A value worked out from the dimensions of both bikes' parts, before anything was measured: rough, and never written. */
export interface SameSag {
  readonly path: AdjusterPath;
  readonly value: TypedQuantity;
}

/**
 * The main pressure or the spring rate of one end; undefined where the other bike has neither, a value that the springs
 * need is not known, or what it would have to be cannot be set there.
 * @param from the first bike with its values, as read in `surroundings`
 * @param to the other bike, with what is copied to it in place
 */
export function sameSag(
  end: End,
  from: { readonly mounted: RiderBike; readonly values: SetupValues },
  to: { readonly mounted: RiderBike; readonly values: SetupValues },
  surroundings: Surroundings,
): SameSag | undefined {
  const [here, there] = [from, to].map(({ mounted }) => suspensionModel(mounted, end, surroundings));
  const spring = here?.springWith(from.values, ISOTHERMAL);
  if (!here || !there || !spring) return undefined;
  const sag = staticSag(spring, here.load);
  const place = suspensionOf(end);
  const found =
    mountedAdjuster(to.mounted.parts, adjusterPath(place, "main-pressure")) ??
    mountedAdjuster(to.mounted.parts, adjusterPath(place, "spring-rate"));
  if (!sag.possible || !found) return undefined;
  const wanted = metres((sag.value / here.stroke) * there.stroke);
  const value = valueForSag({ model: there, found, values: to.values }, wanted, there.load);
  if (value === undefined) return undefined;
  const quantity = settable(found, value);
  return checkValue(to.mounted, found.path, quantity, to.values) ? undefined : { path: found.path, value: quantity };
}
