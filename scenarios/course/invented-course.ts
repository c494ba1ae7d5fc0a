/**
 * An invented downhill course as a GPX file: a line that is laid out on the ellipsoid by seed, in the middle of an ocean,
 * with the wandering heights of a receiver. Its length is known by construction.
 */
import geodesic from "geographiclib-geodesic";
import { createChance } from "#scenarios/player/chance.ts";

/** Open water, thousands of kilometres from any shore: nobody's hill. */
const start = { latitude: -48.5, longitude: -124.25, height: 2235 } as const;
/** Metres between two points: a second at 36 km/h. */
const STEP = 10;
/** How far a height wanders from the ground, m. */
const NOISE = 0.8;

/** Stretches with the fall of the ground (m per m) and how the line turns (degrees a step). */
const stretches = [
  { steps: 12, fall: 0.06, turn: 1 },
  { steps: 34, fall: 0.31, turn: -5 },
  { steps: 18, fall: 0.14, turn: 7 },
  { steps: 8, fall: -0.05, turn: 2 },
  { steps: 46, fall: 0.34, turn: 4 },
  { steps: 30, fall: 0.18, turn: -6 },
  { steps: 40, fall: 0.29, turn: 5 },
  { steps: 24, fall: 0.08, turn: -2 },
] as const;

export interface InventedCourse {
  readonly gpx: string;
  /** Along the ellipsoid, m, before coordinates are rounded to seven decimals, which is 1 cm. */
  readonly length: number;
  /** Of the ground, without the wandering, m. */
  readonly drop: number;
  /** Of the length, how much falls by 0.25 or more. */
  readonly steepShare: number;
}

/** The same seed gives the same file, byte for byte. */
export function inventedCourse(name: string, seed: number): InventedCourse {
  const chance = createChance(seed);
  const wander = (): number => ((chance.below(2001) - 1000) / 1000) * NOISE;
  const { WGS84 } = geodesic.Geodesic;
  let { latitude, longitude, height } = start as { latitude: number; longitude: number; height: number };
  let bearing = 200;
  const lines = [pointLine(latitude, longitude, height)];
  for (const { steps, fall, turn } of stretches) {
    for (let step = 0; step < steps; step += 1) {
      bearing += turn * (step % 12 < 6 ? 1 : -1) + chance.below(3) - 1;
      const next = WGS84.Direct(latitude, longitude, bearing, STEP);
      if (next.lat2 === undefined || next.lon2 === undefined) throw new Error("The line leaves the ellipsoid.");
      latitude = next.lat2;
      longitude = next.lon2;
      height -= fall * STEP;
      lines.push(pointLine(latitude, longitude, height + wander()));
    }
  }
  const steps = stretches.reduce((sum, stretch) => sum + stretch.steps, 0);
  const steep = stretches.filter(({ fall }) => fall >= 0.25).reduce((sum, stretch) => sum + stretch.steps, 0);
  return { gpx: document(name, lines), length: steps * STEP, drop: start.height - height, steepShare: steep / steps };
}

function document(name: string, points: readonly string[]): string {
  return [
    '<?xml version="1.0" encoding="UTF-8"?>',
    '<gpx version="1.1" creator="Pitslate" xmlns="http://www.topografix.com/GPX/1/1">',
    `  <metadata><desc>Invented: calculated by npm run course, never ridden.</desc></metadata>`,
    "  <trk>",
    `    <name>${name}</name>`,
    "    <trkseg>",
    ...points,
    "    </trkseg>",
    "  </trk>",
    "</gpx>",
    "",
  ].join("\n");
}

function pointLine(latitude: number, longitude: number, height: number): string {
  return `      <trkpt lat="${latitude.toFixed(7)}" lon="${longitude.toFixed(7)}"><ele>${height.toFixed(1)}</ele></trkpt>`;
}
