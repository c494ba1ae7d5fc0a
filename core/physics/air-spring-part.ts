/** An air spring as a part on the bench: its chambers, what is set, and what must hold before it can be a spring at all. */
import {
  type AbsolutePressure,
  type Area,
  cubicMetres,
  type GaugePressure,
  type Length,
  type Volume,
} from "#core/quantity/quantity.ts";
import { count, finite, notNegative, positive, within } from "./input.ts";
import { PhysicsError } from "./problem.ts";

/** What the part is: measured, taken from a chart that the team typed in, or fitted. */
export interface AirSpringGeometry {
  /** Full stroke, m, > 0. */
  readonly stroke: Length;
  /** Area on which the main chamber presses, m², > 0. */
  readonly positiveArea: Area;
  /** Area on which the negative chamber presses, m², ≥ 0: the positive area less the rod. */
  readonly negativeArea: Area;
  /** Volume of the main chamber at full extension without spacers, m³, > 0. */
  readonly positiveVolume: Volume;
  /** Volume of the negative chamber at full extension, m³, > 0. */
  readonly negativeVolume: Volume;
  /** Stroke at which main and negative chamber share one pressure, m; 0 for full extension. */
  readonly equalisingStroke: Length;
  /** Volume of the secondary chamber, m³, > 0; absent in a part with one positive chamber. */
  readonly secondaryVolume?: Volume | undefined;
  /** Volume that one spacer takes from the main chamber, m³, ≥ 0. */
  readonly spacerVolume: Volume;
}

/** What is set: pressures as a gauge shows them at full extension, at the temperature of the ride. */
export interface AirSpringSetting {
  readonly main: GaugePressure;
  /** Gauge pressure of the secondary chamber, Pa, above `main`; given exactly when the part has that chamber. */
  readonly secondary?: GaugePressure | undefined;
  /** Number of spacers in the main chamber, a whole number ≥ 0. */
  readonly spacers: number;
  /** Ambient pressure at the place of the ride, Pa. */
  readonly ambient: AbsolutePressure;
}

/**
 * Volume (m³) of the main chamber at full extension, less its spacers.
 * @throws PhysicsError for the first thing that cannot be.
 */
export function checkedChambers(geometry: AirSpringGeometry, setting: AirSpringSetting): Volume {
  positive("Stroke in m", geometry.stroke);
  positive("Area of the positive side in m²", geometry.positiveArea);
  within("Area of the negative side in m²", geometry.negativeArea, 0, geometry.positiveArea);
  positive("Volume of the main chamber in m³", geometry.positiveVolume);
  positive("Volume of the negative chamber in m³", geometry.negativeVolume);
  within("Equalising stroke in m", geometry.equalisingStroke, 0, geometry.stroke);
  notNegative("Volume of a spacer in m³", geometry.spacerVolume);
  count("Number of spacers", setting.spacers);
  positive("Ambient pressure in Pa", setting.ambient);
  notNegative("Main pressure in Pa", setting.main);
  checkSecondary(geometry, setting);

  const volume = geometry.positiveVolume - setting.spacers * geometry.spacerVolume;
  const swept = geometry.positiveArea * geometry.stroke;
  if (volume <= swept)
    throw new PhysicsError(
      "chamber overfull",
      `With ${setting.spacers} spacers the main chamber holds ${(volume * 1e6).toFixed(1)} ml, not more than the ` +
        `${(swept * 1e6).toFixed(1)} ml that the full stroke takes: the part could not reach full travel.`,
      { volume, swept, spacers: setting.spacers },
    );
  return cubicMetres(volume);
}

function checkSecondary(geometry: AirSpringGeometry, setting: AirSpringSetting): void {
  const { secondaryVolume } = geometry;
  const { main, secondary } = setting;
  if (secondaryVolume !== undefined) positive("Volume of the secondary chamber in m³", secondaryVolume);
  if (secondary !== undefined) finite("Secondary pressure in Pa", secondary);
  if ((secondary === undefined) !== (secondaryVolume === undefined))
    throw new PhysicsError(
      "secondary chamber missing",
      secondary === undefined
        ? "This part has a secondary chamber: its pressure must be given too."
        : "This part has no secondary chamber: a secondary pressure makes no sense.",
      {},
    );
  if (secondary !== undefined && secondary <= main)
    throw new PhysicsError(
      "secondary not above main",
      `The secondary pressure (${Math.round(secondary / 1000)} kPa) must be above the main pressure ` +
        `(${Math.round(main / 1000)} kPa): below it the floating piston lies at its stop the wrong way round.`,
      { secondary, main },
    );
}
