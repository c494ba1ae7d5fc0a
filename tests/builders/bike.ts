/**
 * Builders of invented bikes for the tests: each returns a whole, valid thing
 * and takes what a test wants to be different.
 */
import type { Adjuster } from "#core/team/adjuster.ts";
import type { Baseline, SetupValues } from "#core/team/baseline.ts";
import type { Part } from "#core/team/part.ts";
import type { RiderBike } from "#core/team/roster.ts";

const psi = (kind: Adjuster["kind"], maximum: number, large: number): Adjuster => ({
  kind,
  unit: "psi",
  minimum: 20,
  maximum,
  step: 1,
  felt: 2,
  large,
});

const clicks = (kind: Adjuster["kind"]): Adjuster => ({
  kind,
  unit: "clicks",
  minimum: 0,
  maximum: 16,
  step: 1,
  felt: 1,
  large: 3,
});

const spacers: Adjuster = {
  kind: "volume-spacers",
  unit: "spacers",
  minimum: 0,
  maximum: 4,
  step: 1,
  felt: 1,
  large: 1,
};

const airGeometry = {
  stroke: { value: 180, unit: "mm" as const },
  positiveArea: { value: 900, unit: "mm²" as const },
  negativeArea: { value: 800, unit: "mm²" as const },
  positiveVolume: { value: 290, unit: "ml" as const },
  negativeVolume: { value: 60, unit: "ml" as const },
};

/** A fork with a main and a secondary chamber. */
export const twoChamberFork: Part = {
  archetype: "two-chamber air",
  name: "Two-chamber fork",
  place: "fork",
  geometry: { ...airGeometry, secondaryVolume: { value: 40, unit: "ml" } },
  adjusters: [
    psi("main-pressure", 110, 5),
    psi("secondary-pressure", 220, 10),
    clicks("rebound"),
    clicks("low-speed-compression"),
    clicks("high-speed-compression"),
  ],
};

/** A fork with one positive chamber and spacers. */
export const oneChamberFork: Part = {
  archetype: "air",
  name: "One-chamber fork",
  place: "fork",
  geometry: { ...airGeometry, spacerVolume: { value: 9, unit: "ml" } },
  adjusters: [psi("main-pressure", 110, 5), spacers, clicks("rebound"), clicks("low-speed-compression")],
};

/** A shock with a coil spring. */
export const coilShock: Part = {
  archetype: "coil",
  name: "Coil shock",
  place: "shock",
  geometry: { stroke: { value: 70, unit: "mm" }, threadPitch: { value: 1.5, unit: "mm" } },
  adjusters: [
    { kind: "spring-rate", unit: "N/mm", minimum: 40, maximum: 120, step: 5, felt: 5, large: 10 },
    { kind: "preload", unit: "turns", minimum: 1, maximum: 3, step: 0.25, felt: 0.5, large: 1 },
    clicks("rebound"),
  ],
};

const tyre = (place: "front-tyre" | "rear-tyre"): Part => ({
  archetype: "tyre",
  name: "Tyre",
  place,
  geometry: { tyreMarkedMaximum: { value: 40, unit: "psi" }, rimMarkedMaximum: { value: 35, unit: "psi" } },
  adjusters: [{ kind: "tyre-pressure", unit: "psi", minimum: 12, maximum: 45, step: 0.5, felt: 1, large: 3 }],
});

/** A rider of 80 kg on a bike with a two-chamber fork and a coil shock. */
export function riderBike(
  changes: { fork?: Part; shock?: Part; massKg?: number; frontShare?: number } = {},
): RiderBike {
  return {
    riderId: "alder",
    rider: {
      name: "Alder",
      mass: { value: changes.massKg ?? 80, unit: "kg" },
      bike: "alder-1",
      ...(changes.frontShare !== undefined && { frontShare: changes.frontShare }),
    },
    bikeId: "alder-1",
    bike: {
      name: "Alder one",
      rider: "alder",
      sprungMass: { value: 12, unit: "kg" },
      forkAngle: { value: 27, unit: "°" },
      rearWheelTravel: { value: 190, unit: "mm" },
      parts: { fork: "fork-1", shock: "shock-1", "front-tyre": "tyre-1", "rear-tyre": "tyre-2" },
    },
    parts: {
      fork: changes.fork ?? twoChamberFork,
      shock: changes.shock ?? coilShock,
      "front-tyre": tyre("front-tyre"),
      "rear-tyre": tyre("rear-tyre"),
    },
  };
}

/** Values for every adjuster of {@link riderBike}. */
export const setupValues: SetupValues = {
  "fork.main-pressure": { value: 60, unit: "psi" },
  "fork.secondary-pressure": { value: 110, unit: "psi" },
  "fork.rebound": { value: 8, unit: "clicks" },
  "fork.low-speed-compression": { value: 9, unit: "clicks" },
  "fork.high-speed-compression": { value: 6, unit: "clicks" },
  "shock.spring-rate": { value: 85, unit: "N/mm" },
  "shock.preload": { value: 1, unit: "turns" },
  "shock.rebound": { value: 7, unit: "clicks" },
  "front-tyre.tyre-pressure": { value: 23, unit: "psi" },
  "rear-tyre.tyre-pressure": { value: 26, unit: "psi" },
};

/** A baseline of {@link riderBike} at sea level and 20 °C; `values` replace some of {@link setupValues}. */
export function baseline(values: SetupValues = {}, changes: Partial<Baseline> = {}): Baseline {
  return {
    bike: "alder-1",
    values: { ...setupValues, ...values },
    heldAt: { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } },
    mass: { value: 80, unit: "kg" },
    ...changes,
  };
}
