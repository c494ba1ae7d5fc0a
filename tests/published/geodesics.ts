/** Distances on the WGS 84 ellipsoid, printed by others or by two independent methods. */
import { geodesicDistance } from "#core/course/geodesic-distance.ts";
import { answersOf, type KnownAnswer } from "./known-answer.ts";

type Place = readonly [latitude: number, longitude: number];

const apart =
  ([latitude, longitude]: Place, to: Place) =>
  () =>
    geodesicDistance({ latitude, longitude }, { latitude: to[0], longitude: to[1] });

export const geodesicAnswers: readonly KnownAnswer[] = [
  ...answersOf(
    {
      source: "Karney's test set for geodesics (GeodTest), the lines that his own library's tests carry",
      provenance: "read in a transcription of the source and recomputed",
      tolerance: { absolute: 1e-6 },
      because: "the set is right to nanometres; coordinates have 5 decimals, exactly as they are put in",
    },
    [["a random line of 8900 km", apart([35.60777, -139.44815], [-11.17491, -69.95921]), 8935244.56048183]],
  ),
  ...answersOf(
    {
      source: "the tests of GeographicLib, GeodSolve0 and GeodSolve4",
      provenance: "read in a transcription of the source and recomputed",
      tolerance: { absolute: 5e-4 },
      because: "printed to a tenth of a millimetre or a millimetre",
    },
    [
      ["from one continent to another", apart([40.6, -73.8], [49.01666667, 2.55]), 5853226.2556],
      ["7 cm", apart([36.493349428792, 0], [36.49334942879201, 0.0000008]), 0.072],
      ["a point from itself", apart([46.5, 8.25], [46.5, 8.25]), 0],
    ],
  ),
  ...answersOf(
    {
      source: "a widely used implementation of Vincenty's method (1975), in its tests",
      provenance: "read in a transcription of the source and recomputed",
      tolerance: { absolute: 0.001 },
      because: "Vincenty's method, another than ours, is good to half a millimetre, and printed to one",
    },
    [
      ["the length of an island", apart([50.06632, -5.71475], [58.64402, -3.07009]), 969954.166],
      ["north-east", apart([30, 30], [60, 60]), 4015703.021],
      ["south-west", apart([-30, -30], [-60, -60]), 4015703.021],
      ["across the date line", apart([30, 120], [30, -120]), 10825924.089],
    ],
  ),
  ...answersOf(
    {
      source: "the lengths of a degree on the ellipsoid, and a quarter of the meridian",
      provenance: "computed with the named reference",
      tolerance: { absolute: 0.001 },
      because: "given to a hundredth of a millimetre",
    },
    [
      ["a degree of longitude at the equator", apart([0, 0], [0, 1]), 111319.49079],
      ["the first degree of latitude", apart([0, 0], [1, 0]), 110574.38856],
      ["the degree of latitude about 45", apart([44.5, 7], [45.5, 7]), 111131.77765],
      ["a degree of longitude at 45", apart([45, 0], [45, 1]), 78846.33471],
      ["a quarter of the meridian", apart([0, 0], [90, 0]), 10001965.72931],
    ],
  ),
];
