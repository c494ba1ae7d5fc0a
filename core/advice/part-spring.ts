/** The spring that a part makes with given values. */
import { createAirSpring } from "#core/physics/air-spring.ts";
import { standardPressure } from "#core/physics/atmosphere.ts";
import { createCoilSpring, preloadFromTurns } from "#core/physics/coil.ts";
import { PhysicsError } from "#core/physics/problem.ts";
import type { Spring } from "#core/physics/spring.ts";
import {
  cubicMetres,
  gaugePascals,
  metres,
  newtonsPerMetre,
  squareMetres,
  type Volume,
} from "#core/quantity/quantity.ts";
import { toSi } from "#core/quantity/unit.ts";
import { type AdjusterKind, adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { Part } from "#core/team/part.ts";
import type { Surroundings } from "#core/team/surroundings.ts";

/**
 * The spring of a fork or shock, or undefined while a value that it needs is not known, or they make none (secondary
 * below main, spacers that fill the chamber): values come from people, and that is no fault of the program.
 * @param mainVolume the main chamber's volume (m³) where it was fitted; else the part's own
 */
export function partSpring(
  part: Part,
  values: SetupValues,
  surroundings: Surroundings,
  exponent: number,
  mainVolume?: Volume,
): Spring | undefined {
  try {
    return springOf(part, values, surroundings, exponent, mainVolume);
  } catch (error) {
    if (error instanceof PhysicsError) return undefined;
    throw error;
  }
}

function springOf(
  part: Part,
  values: SetupValues,
  { altitude }: Surroundings,
  exponent: number,
  mainVolume: Volume | undefined,
): Spring | undefined {
  const at = (kind: AdjusterKind) => {
    const value = values[adjusterPath(part.place, kind)];
    return value && toSi(value);
  };
  if (part.archetype === "tyre") return undefined;
  if (part.archetype === "coil") {
    const rate = at("spring-rate");
    if (rate === undefined) return undefined;
    return createCoilSpring({
      rate: newtonsPerMetre(rate),
      preload: preloadFromTurns(at("preload") ?? 0, metres(toSi(part.geometry.threadPitch))),
      stroke: metres(toSi(part.geometry.stroke)),
    });
  }
  const { geometry } = part;
  const main = at("main-pressure");
  const secondary = at("secondary-pressure");
  if (main === undefined || (geometry.secondaryVolume && secondary === undefined)) return undefined;
  return createAirSpring(
    {
      stroke: metres(toSi(geometry.stroke)),
      positiveArea: squareMetres(toSi(geometry.positiveArea)),
      negativeArea: squareMetres(toSi(geometry.negativeArea)),
      positiveVolume: mainVolume ?? cubicMetres(toSi(geometry.positiveVolume)),
      negativeVolume: cubicMetres(toSi(geometry.negativeVolume)),
      equalisingStroke: metres(geometry.equalisingStroke ? toSi(geometry.equalisingStroke) : 0),
      secondaryVolume: geometry.secondaryVolume && cubicMetres(toSi(geometry.secondaryVolume)),
      spacerVolume: cubicMetres(geometry.spacerVolume ? toSi(geometry.spacerVolume) : 0),
    },
    {
      main: gaugePascals(main),
      secondary: geometry.secondaryVolume && secondary !== undefined ? gaugePascals(secondary) : undefined,
      spacers: at("volume-spacers") ?? 0,
      ambient: standardPressure(metres(toSi(altitude))),
    },
    exponent,
  );
}
