/** Corrections that the physics works out: the rider's mass, the altitude, and rebound that follows the spring. */
import { DEFAULT_RIDING_EXPONENT, ISOTHERMAL } from "#core/physics/gas.ts";
import { staticSag } from "#core/physics/sag.ts";
import { newtons } from "#core/quantity/quantity.ts";
import { convert, type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import { adjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type MountedAdjuster, mountedAdjuster, type RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { Correction } from "./correction.ts";
import { reboundChange } from "./rebound-follows.ts";
import { strokeAt, valueForEnergy, valueForSag } from "./sizing.ts";
import { loadAdjuster } from "./spring-adjuster.ts";
import type { SuspensionModel } from "./suspension-model.ts";

/** The part of the stroke up to which altitude must not change what the spring takes up. */
const LATE_STROKE = 0.9;

/** Keeps the baseline's sag for a rider who has become heavier or lighter. */
export function massCorrection(
  mounted: RiderBike,
  model: SuspensionModel,
  values: SetupValues,
  massThen: TypedQuantity,
): Correction | undefined {
  const found = loadAdjuster(mounted, model.place);
  const sprung = toSi(mounted.bike.sprungMass);
  const now = toSi(mounted.rider.mass) + sprung;
  const then = toSi(massThen) + sprung;
  const spring = model.springWith(values, ISOTHERMAL);
  const current = found && values[found.path];
  if (!found || !spring || !current || Math.abs(now - then) < 0.05) return undefined;
  const sag = staticSag(spring, newtons((model.load * then) / now));
  const value = sag.possible ? valueForSag({ model, found, values }, sag.value, model.load) : undefined;
  if (value === undefined) return undefined;
  const was = {
    value: Number(convert(massThen, mounted.rider.mass.unit).value.toFixed(1)),
    unit: mounted.rider.mass.unit,
  };
  return visible(found, {
    rule: "rider-mass",
    path: found.path,
    change: value - current.value,
    because: { type: "rider mass", now: mounted.rider.mass, atBaseline: was },
    provenance: "physics",
  });
}

/**
 * Keeps what the spring takes up late in the stroke when the ambient pressure is another than at the baseline: thinner
 * air makes the same gauge pressure less progressive. It is made in the main chamber, whether or not there is a
 * secondary one: the secondary chamber reaches it at low altitudes only, and a correction that changes its place on the
 * way up a hill cannot be trusted.
 */
export function altitudeCorrection(
  mounted: RiderBike,
  modelThen: SuspensionModel,
  modelNow: SuspensionModel,
  values: SetupValues,
  altitudes: { readonly atBaseline: TypedQuantity; readonly today: Surroundings["altitude"] },
): Correction | undefined {
  const found = mountedAdjuster(mounted.parts, adjusterPath(modelNow.place, "main-pressure"));
  const current = found && values[found.path];
  const before = modelThen.springWith(values, DEFAULT_RIDING_EXPONENT);
  if (!found || !current || !before) return undefined;
  const stroke = strokeAt(modelNow, LATE_STROKE);
  const value = valueForEnergy({ model: modelNow, found, values }, stroke, before.energy(stroke));
  if (value === undefined) return undefined;
  return visible(found, {
    rule: "altitude",
    path: found.path,
    change: value - current.value,
    because: { type: "altitude", now: wholeMetres(altitudes.today), atBaseline: wholeMetres(altitudes.atBaseline) },
    provenance: "physics",
  });
}

/** The clicks by which rebound follows the spring from `before` to `after`. */
export function reboundCorrection(
  mounted: RiderBike,
  model: SuspensionModel,
  before: SetupValues,
  after: SetupValues,
): Correction | undefined {
  const change = reboundChange(mounted, model, before, after);
  if (change === 0) return undefined;
  return {
    rule: "rebound-follows",
    path: adjusterPath(model.place, "rebound"),
    change,
    because: { type: "rebound follows", spring: change > 0 ? "softer" : "stiffer" },
    provenance: "physics",
  };
}

function wholeMetres(altitude: TypedQuantity): TypedQuantity {
  return { value: Math.round(toSi(altitude)), unit: "m" };
}

/** Drops what no gauge shows: less than a quarter of the adjuster's step. */
function visible(found: MountedAdjuster, correction: Correction): Correction | undefined {
  return Math.abs(correction.change) >= found.adjuster.step / 4 ? correction : undefined;
}
