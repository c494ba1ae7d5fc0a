/** What must hold of an air spring's chambers and pressures before it can be a spring at all. */
import type { AirSpringGeometry, AirSpringSetting } from "./air-spring.ts";
import { count, finite, notNegative, positive, within } from "./input.ts";
import { PhysicsError } from "./problem.ts";

/**
 * Volume (m³) of the main chamber at full extension, less its spacers.
 * @throws PhysicsError for the first thing that cannot be.
 */
export function checkedChambers(geometry: AirSpringGeometry, setting: AirSpringSetting): number {
  positive("Stroke", geometry.stroke);
  positive("Area of the positive side", geometry.positiveArea);
  within("Area of the negative side", geometry.negativeArea, 0, geometry.positiveArea);
  positive("Volume of the main chamber", geometry.positiveVolume);
  positive("Volume of the negative chamber", geometry.negativeVolume);
  within("Equalising stroke", geometry.equalisingStroke, 0, geometry.stroke);
  notNegative("Volume of a spacer", geometry.spacerVolume);
  count("Number of spacers", setting.spacers);
  positive("Ambient pressure", setting.ambient);
  notNegative("Main pressure", setting.main);
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
  return volume;
}

function checkSecondary(geometry: AirSpringGeometry, setting: AirSpringSetting): void {
  const { secondaryVolume } = geometry;
  const { main, secondary } = setting;
  if (secondaryVolume !== undefined) positive("Volume of the secondary chamber", secondaryVolume);
  if (secondary !== undefined) finite("Secondary pressure", secondary);
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
