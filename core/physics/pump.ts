/**
 * What a pump shows when it goes on a chamber.
 *
 *   p = (p_c V_c + p_a V_h) / (V_c + V_h)
 *
 * p_c pressure of the chamber, p_a ambient pressure, which the hose holds, Pa,
 * absolute · V_c, V_h volumes of chamber and hose, m³. Source: conservation of
 * mass for an ideal gas at one temperature (Çengel and Boles, Thermodynamics,
 * two tanks joined). Taking the pump off loses only what is between valve and
 * hose: the chamber keeps what was set.
 */
import { absoluteFromGauge, gaugeFromAbsolute } from "#core/quantity/pressure.ts";
import {
  type AbsolutePressure,
  absolutePascals,
  type GaugePressure,
  gaugePascals,
  type Volume,
} from "#core/quantity/quantity.ts";
import { type GasState, gaugeAfter } from "./gas.ts";
import { finite, notNegative, positive } from "./input.ts";

/** A chamber and the hose that goes on it. */
export interface PumpConnection {
  /** Volume of the chamber, m³, > 0. */
  readonly chamberVolume: Volume;
  /** Volume of the hose with the gauge, m³, ≥ 0. */
  readonly hoseVolume: Volume;
  /** Ambient pressure, Pa, > 0. */
  readonly ambient: AbsolutePressure;
}

/** The first reading (gauge, Pa) of a pump put on a chamber of `chamberPressure` (gauge, Pa). Lower, and no leak yet. */
export function firstReading(connection: PumpConnection & { readonly chamberPressure: GaugePressure }): GaugePressure {
  const { chamber, hose, ambient } = volumes(connection);
  const inside = positive("Chamber pressure in Pa", absoluteFromGauge(connection.chamberPressure, ambient));
  return gaugeFromAbsolute(absolutePascals((inside * chamber + ambient * hose) / (chamber + hose)), ambient);
}

/** What the chamber held (gauge, Pa) before a pump that now shows `reading` (gauge, Pa) went on. Inverse of {@link firstReading}. */
export function chamberBeforeReading(connection: PumpConnection & { readonly reading: GaugePressure }): GaugePressure {
  const { chamber, hose, ambient } = volumes(connection);
  const shared = positive("Reading in Pa", absoluteFromGauge(connection.reading, ambient));
  const inside = (shared * (chamber + hose) - ambient * hose) / chamber;
  return gaugeFromAbsolute(absolutePascals(positive("Chamber pressure in Pa", inside)), ambient);
}

/**
 * The first reading (gauge, Pa) to expect `now` of a chamber last set to `set` (gauge, Pa) at `setAt`:
 * its temperature and the ambient pressure may have changed since, then the hose takes its part.
 */
export function expectedFirstReading(chamber: {
  readonly set: GaugePressure;
  readonly setAt: GasState;
  readonly now: GasState;
  readonly chamberVolume: Volume;
  readonly hoseVolume: Volume;
}): GaugePressure {
  const { set, setAt, now, chamberVolume, hoseVolume } = chamber;
  const chamberPressure = gaugeAfter({ set, setAt, readAt: now });
  return firstReading({ chamberVolume, hoseVolume, ambient: now.ambient, chamberPressure });
}

/** The closed list of what a first reading can mean. */
export const readingVerdicts = ["as expected", "leak", "more than expected"] as const;
export type ReadingVerdict = (typeof readingVerdicts)[number];

/**
 * Whether a chamber leaked: only what is missing beyond the `tolerance` of the gauge (Pa, ≥ 0) counts.
 * `missing` (Pa) is expected less read, so a leak has it above 0.
 */
export function judgeReading(reading: {
  readonly expected: GaugePressure;
  readonly read: GaugePressure;
  readonly tolerance: GaugePressure;
}): { readonly verdict: ReadingVerdict; readonly missing: GaugePressure } {
  const missing = gaugePascals(
    finite("Expected reading in Pa", reading.expected) - finite("Reading in Pa", reading.read),
  );
  const tolerance = notNegative("Tolerance of the gauge in Pa", reading.tolerance);
  if (missing > tolerance) return { verdict: "leak", missing };
  return { verdict: missing < -tolerance ? "more than expected" : "as expected", missing };
}

function volumes(connection: PumpConnection): { chamber: number; hose: number; ambient: AbsolutePressure } {
  return {
    chamber: positive("Volume of the chamber in m³", connection.chamberVolume),
    hose: notNegative("Volume of the hose in m³", connection.hoseVolume),
    ambient: positive("Ambient pressure in Pa", connection.ambient),
  };
}
