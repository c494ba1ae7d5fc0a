/**
 * One end of the bike as physics sees it: the spring that its settings make, and
 * the load that it carries, both along the part.
 *
 * Until the load was fitted to a measured sag it is worked out from the masses
 * and a default front share, and says so: then only direction and rough size of
 * what follows can be trusted.
 */
import { createAirSpring } from "#core/physics/air-spring.ts";
import { standardPressure } from "#core/physics/atmosphere.ts";
import { createCoilSpring, preloadFromTurns } from "#core/physics/coil.ts";
import { ISOTHERMAL } from "#core/physics/gas.ts";
import { PhysicsError } from "#core/physics/problem.ts";
import { forkLoad, wheelLoad } from "#core/physics/sag.ts";
import type { Spring } from "#core/physics/spring.ts";
import {
  cubicMetres,
  type Force,
  gaugePascals,
  kilograms,
  type Length,
  type Mass,
  metres,
  newtons,
  newtonsPerMetre,
  radians,
  squareMetres,
} from "#core/quantity/quantity.ts";
import { type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { type AdjusterKind, adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import type { Part } from "#core/team/part.ts";
import { type End, suspensionOf } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";

/** Part of the sprung weight on the front wheel, standing on level pedals, until it was fitted. Common practice, no source. */
export const DEFAULT_FRONT_SHARE = 0.4;

/** A sag that was measured, with what was set and where, and the rider's mass at the time. */
export interface MeasuredSag {
  readonly sag: TypedQuantity;
  readonly values: SetupValues;
  readonly heldAt: Surroundings;
  readonly mass: TypedQuantity;
}

export interface SuspensionModel {
  readonly end: End;
  readonly place: "fork" | "shock";
  readonly stroke: Length;
  /** Wheel travel over stroke: 1 for a fork, the mean leverage ratio for a shock. */
  readonly leverageRatio: number;
  /** Static load along the part. */
  readonly load: Force;
  /** The mass that moves with this end, seen at the part: that which gives the natural frequency with its rate. */
  readonly mass: Mass;
  /** True when the load comes from a measured sag. */
  readonly fitted: boolean;
  /** The spring that `values` make, or undefined while a value that it needs is not known, or they make none (secondary below main). */
  springWith(values: SetupValues, exponent: number): Spring | undefined;
}

/**
 * The model of one end, or undefined when the bike has no suspension there or its dimensions are not known.
 * Values are gauge pressures at the temperature of the ride, at the altitude of `surroundings`.
 */
export function suspensionModel(
  mounted: RiderBike,
  end: End,
  surroundings: Surroundings,
  measured?: MeasuredSag,
): SuspensionModel | undefined {
  const place = suspensionOf(end);
  const part = mounted.parts[place];
  if (!part || part.archetype === "tyre") return undefined;
  const stroke = metres(toSi(part.geometry.stroke));
  const leverageRatio = leverageRatioOf(mounted, end, stroke);
  if (leverageRatio === undefined) return undefined;
  const share = shareOf(mounted, end);
  const sprung = sprungMass(mounted, mounted.rider.mass);
  const fittedLoad = measured && loadFrom(part, place, measured, mounted);
  return {
    end,
    place,
    stroke,
    leverageRatio,
    load: fittedLoad ?? assumedLoad(mounted, end, sprung, leverageRatio),
    mass: kilograms(sprung * share * leverageRatio ** 2),
    fitted: fittedLoad !== undefined,
    springWith: (values, exponent) => buildable(() => springOf(part, place, values, surroundings, exponent)),
  };
}

function leverageRatioOf(mounted: RiderBike, end: End, stroke: Length): number | undefined {
  if (end === "front") return 1;
  const travel = mounted.bike.rearWheelTravel;
  return travel && toSi(travel) / stroke;
}

function shareOf({ rider }: RiderBike, end: End): number {
  const front = rider.frontShare ?? DEFAULT_FRONT_SHARE;
  return end === "front" ? front : 1 - front;
}

function sprungMass({ bike }: RiderBike, riderMass: TypedQuantity): Mass {
  return kilograms(toSi(riderMass) + toSi(bike.sprungMass));
}

function assumedLoad(mounted: RiderBike, end: End, sprung: Mass, leverageRatio: number): Force {
  const share = shareOf(mounted, end);
  if (end === "rear") return newtons(wheelLoad({ sprungMass: sprung, share }) * leverageRatio);
  return forkLoad({
    sprungMass: sprung,
    frontShare: share,
    angleFromVertical: radians(toSi(mounted.bike.forkAngle)),
  });
}

/** The load that the measured sag proves, carried over to the rider's mass of today. */
function loadFrom(part: Part, place: "fork" | "shock", measured: MeasuredSag, mounted: RiderBike): Force | undefined {
  const spring = buildable(() => springOf(part, place, measured.values, measured.heldAt, ISOTHERMAL));
  const sag = metres(toSi(measured.sag));
  if (!spring || sag <= 0 || sag >= spring.stroke) return undefined;
  const ratio = sprungMass(mounted, mounted.rider.mass) / sprungMass(mounted, measured.mass);
  return newtons(spring.force(sag) * ratio);
}

/** Values come from people: a setup that is no spring is not a fault of the program. */
function buildable(build: () => Spring | undefined): Spring | undefined {
  try {
    return build();
  } catch (error) {
    if (error instanceof PhysicsError) return undefined;
    throw error;
  }
}

function springOf(
  part: Part,
  place: "fork" | "shock",
  values: SetupValues,
  { altitude }: Surroundings,
  exponent: number,
): Spring | undefined {
  const at = (kind: AdjusterKind) => {
    const value = values[adjusterPath(place, kind)];
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
      positiveVolume: cubicMetres(toSi(geometry.positiveVolume)),
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
