/**
 * Gauge and absolute pressure: `p = p_g + p_a`, where `p_a` is the ambient
 * pressure at the place and moment of the reading. Gas laws hold for `p` only;
 * a pump's gauge shows `p_g` only.
 */
import { type AbsolutePressure, absolutePascals, type GaugePressure, gaugePascals } from "./quantity.ts";

/** Absolute pressure (Pa) of a gauge reading (Pa) taken where the ambient pressure is `ambient` (Pa). */
export function absoluteFromGauge(gauge: GaugePressure, ambient: AbsolutePressure): AbsolutePressure {
  return absolutePascals(gauge + ambient);
}

/** What a gauge shows (Pa) for an absolute pressure (Pa) where the ambient pressure is `ambient` (Pa). */
export function gaugeFromAbsolute(absolute: AbsolutePressure, ambient: AbsolutePressure): GaugePressure {
  return gaugePascals(absolute - ambient);
}
