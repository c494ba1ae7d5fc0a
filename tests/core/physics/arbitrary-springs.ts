/** Random parts and settings that a bench could meet, for the property tests. Numbers are made up. */
import fc from "fast-check";
import { type AirSpringGeometry, type AirSpringSetting, createLinkage, type Linkage } from "#core/physics/index.ts";
import {
  type AbsolutePressure,
  absolutePascals,
  cubicMetres,
  gaugePascals,
  metres,
  squareMetres,
} from "#core/quantity/quantity.ts";

/** A number between two, never NaN, with the ends likely. */
export const between = (low: number, high: number) =>
  fc.double({ min: low, max: high, noNaN: true, noDefaultInfinity: true });

export interface AirSpringCase {
  readonly geometry: AirSpringGeometry;
  readonly setting: AirSpringSetting;
  readonly exponent: number;
}

export const ambients: fc.Arbitrary<AbsolutePressure> = between(65_000, 105_000).map(absolutePascals);
export const exponents = between(1, 1.4);

const geometries = fc
  .record({
    stroke: between(0.1, 0.2),
    area: between(6e-4, 1.4e-3),
    rod: between(0.05, 0.3),
    compression: between(2, 5),
    negative: between(0.15, 0.5),
    equalising: between(0, 0.05),
    spacer: between(0, 0.2),
    secondary: between(0.1, 0.4),
  })
  .map((part) => {
    const swept = part.area * part.stroke;
    const volume = swept / (1 - 1 / part.compression);
    return {
      stroke: metres(part.stroke),
      positiveArea: squareMetres(part.area),
      negativeArea: squareMetres(part.area * (1 - part.rod)),
      positiveVolume: cubicMetres(volume),
      negativeVolume: cubicMetres(swept * part.negative),
      equalisingStroke: metres(part.stroke * part.equalising),
      spacerVolume: cubicMetres((volume - swept) * part.spacer),
      secondaryVolume: cubicMetres(swept * part.secondary),
    };
  });

const settings = fc
  .record({
    main: between(2e5, 9e5),
    above: between(2e4, 8e5),
    spacers: fc.integer({ min: 0, max: 3 }),
    ambient: ambients,
  })
  .map(({ main, above, spacers, ambient }) => ({
    main: gaugePascals(main),
    secondary: gaugePascals(main + above),
    spacers,
    ambient,
  }));

/** Air springs with a main and a secondary chamber. */
export const twoChamberCases: fc.Arbitrary<AirSpringCase> = fc.record({
  geometry: geometries,
  setting: settings,
  exponent: exponents,
});

/** Air springs with one positive chamber. */
export const oneChamberCases: fc.Arbitrary<AirSpringCase> = twoChamberCases.map(({ geometry, setting, exponent }) => {
  const { secondaryVolume: _volume, ...single } = geometry;
  const { secondary: _pressure, ...alone } = setting;
  return { geometry: single, setting: alone, exponent };
});

/** Air springs of both kinds. */
export const airSpringCases = fc.oneof(oneChamberCases, twoChamberCases);

/** Linkages of three to eight points, rising or falling, of which some have a straight piece with one ratio. */
export const linkages: fc.Arbitrary<Linkage> = fc
  .record({
    travel: between(0.1, 0.22),
    ratios: fc.array(fc.oneof(between(1.8, 3.6), fc.constant(2.5)), { minLength: 3, maxLength: 8 }),
  })
  .map(({ travel, ratios }) =>
    createLinkage(
      ratios.map((leverageRatio, index) => ({
        wheelTravel: metres((travel * index) / (ratios.length - 1)),
        leverageRatio,
      })),
    ),
  );
