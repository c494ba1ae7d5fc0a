/**
 * The standard atmosphere below the tropopause.
 *
 *   H = r z / (r + z)              T = T0 − L H
 *   p = p0 (T / T0)^(g0 / (R L))   ρ = p / (R T)
 *
 * z geometric altitude, m · H geopotential altitude, m · T0 = 288.15 K ·
 * p0 = 101 325 Pa · L = 0.0065 K/m · g0 = 9.80665 m/s² ·
 * R = 287.05287 J/(kg K) · r = 6 356 766 m.
 *
 * Source: ISO 2533:1975, the same model as U.S. Standard Atmosphere 1976 below
 * 32 km. Valid for geopotential altitudes from −2 000 m to 11 000 m.
 */
import { PASCALS_PER_STANDARD_ATMOSPHERE, STANDARD_GRAVITY } from "#core/quantity/constants.ts";
import {
  type AbsolutePressure,
  absolutePascals,
  kelvins,
  type Length,
  metres,
  type Temperature,
} from "#core/quantity/quantity.ts";
import { finite, within } from "./input.ts";

/** Specific gas constant of dry air, J/(kg K). Source: ISO 2533:1975. */
export const GAS_CONSTANT_OF_AIR = 287.05287;

const SEA_LEVEL_TEMPERATURE = 288.15;
const LAPSE_RATE = 0.0065;
const EARTH_RADIUS = 6_356_766;
const PRESSURE_EXPONENT = STANDARD_GRAVITY / (GAS_CONSTANT_OF_AIR * LAPSE_RATE);
const LOWEST_GEOPOTENTIAL = -2000;
const HIGHEST_GEOPOTENTIAL = 11_000;
/** The lowest and the highest air pressure on record at any place, with a margin; outside is a mistyped barometer, Pa. */
const BAROMETER_RANGE = [20_000, 110_000] as const;

/** Geopotential altitude (m) of a geometric altitude (m, above −2 000): what is left of the height when gravity is taken as constant. */
export function geopotentialAltitude(altitude: Length): Length {
  finite("Altitude in m", altitude);
  return metres((EARTH_RADIUS * altitude) / (EARTH_RADIUS + altitude));
}

/** Temperature (K) of the standard atmosphere at a geometric altitude (m). @throws PhysicsError outside the valid range. */
export function standardTemperature(altitude: Length): Temperature {
  const height = geopotentialAltitude(altitude);
  within("Altitude in m", height, LOWEST_GEOPOTENTIAL, HIGHEST_GEOPOTENTIAL);
  return kelvins(SEA_LEVEL_TEMPERATURE - LAPSE_RATE * height);
}

/** Pressure (Pa) of the standard atmosphere at a geometric altitude (m). @throws PhysicsError outside the valid range. */
export function standardPressure(altitude: Length): AbsolutePressure {
  const ratio = standardTemperature(altitude) / SEA_LEVEL_TEMPERATURE;
  return absolutePascals(PASCALS_PER_STANDARD_ATMOSPHERE * ratio ** PRESSURE_EXPONENT);
}

/** Density (kg/m³) of the standard atmosphere at a geometric altitude (m). @throws PhysicsError outside the valid range. */
export function standardDensity(altitude: Length): number {
  return standardPressure(altitude) / (GAS_CONSTANT_OF_AIR * standardTemperature(altitude));
}

/**
 * The ambient pressure (Pa) to reckon with: a barometer that was read at the place itself
 * (not reduced to sea level) wins; without one, the standard atmosphere at the altitude.
 * Weather moves the true pressure by some 3 % around the standard one.
 * @throws PhysicsError for a barometer outside 20 to 110 kPa or an altitude outside the valid range.
 */
export function ambientPressure(place: {
  readonly altitude: Length;
  readonly barometer?: AbsolutePressure | undefined;
}): AbsolutePressure {
  if (place.barometer === undefined) return standardPressure(place.altitude);
  return within("Barometer reading in Pa", place.barometer, ...BAROMETER_RANGE);
}
