/**
 * What to set at the bench so that it is right on the course: a pressure that
 * is set in the cool of the morning reads higher in the heat of the race.
 */

import { standardPressure } from "#core/physics/atmosphere.ts";
import { gaugeAfter, gaugeToSetNow } from "#core/physics/gas.ts";
import { gaugePascals, kelvins, metres } from "#core/quantity/quantity.ts";
import { dimensionOf, fromSi, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import type { Surroundings } from "#core/team/surroundings.ts";

/** The reading to set at `bench` for `wanted` at `course`, unrounded, in the same unit. Counts and rates are as they are. */
export function benchReading(wanted: TypedQuantity, course: Surroundings, bench: Surroundings): TypedQuantity {
  if (dimensionOf(wanted.unit) !== "pressure") return wanted;
  const reading = gaugeToSetNow({
    wanted: gaugePascals(toSi(wanted)),
    wantedAt: gasState(course),
    now: gasState(bench),
  });
  return fromSi(reading, wanted.unit);
}

/** What a pressure that was set at `setAt` reads at `readAt`, unrounded, in the same unit. Inverse of {@link benchReading}. */
export function readingAfter(set: TypedQuantity, setAt: Surroundings, readAt: Surroundings): TypedQuantity {
  if (dimensionOf(set.unit) !== "pressure") return set;
  const reading = gaugeAfter({ set: gaugePascals(toSi(set)), setAt: gasState(setAt), readAt: gasState(readAt) });
  return fromSi(reading, set.unit);
}

/** A pressure cannot be read below ambient here, and the schema keeps temperatures far above absolute zero. */
function gasState({ temperature, altitude }: Surroundings) {
  return { temperature: kelvins(toSi(temperature)), ambient: standardPressure(metres(toSi(altitude))) };
}
