/**
 * A course's profile from a recorded track.
 *
 *   s_i = s_(i−1) + g(P_(i−1), P_i)          distance along the course, m, s_0 = 0
 *   h(s)                                      straight between the points that have a height
 *   H(s)                                      at s the straight line of least squares through h from s − w to s + w, w = 25 m
 *
 * where g is the geodesic distance. Heights of satellite receivers wander by metres from point to point, which over 5 m
 * of ground would make walls of a meadow. The line is the smoothing of A. Savitzky and M. J. E. Golay, Analytical
 * Chemistry 36 (1964) 1627–1639, of degree one: in the middle it is the mean of the window, and at the ends, where the
 * window is cut off, it goes on by the slope. That it is 50 m wide is common practice, no source. It keeps every even
 * slope as it is, and rounds what is shorter than 50 m: a drop-off of 3 m is no steep piece of the profile.
 *
 * Between two segments of a track the straight line is taken, since the course goes on there too; how much that was is
 * told. A point without a height counts for the distance alone.
 */
import { type CourseProfile, LONGEST_COURSE, MOST_PROFILE_POINTS } from "#core/weekend/course-shape.ts";
import { geodesicDistance } from "./geodesic-distance.ts";
import type { TrackPoint, TrackSegments } from "./track.ts";
import { SHORTEST_TRACK, SMOOTHED_OVER } from "./track-limits.ts";

/** Distance between two points of a profile, m, unless it would have too many. */
const SPACING = 10;
/** Distance between the heights that are smoothed, m. */
const SAMPLING = 5;

export type TrackProblem =
  | { readonly type: "no height" }
  | { readonly type: "too short" | "too long"; readonly length: number };

/** What had to be filled in: straight lines between segments, m, and points without a height. */
export interface Filled {
  readonly gaps: number;
  readonly gapLength: number;
  readonly withoutHeight: number;
}

export type TrackProfile =
  | { readonly ok: true; readonly profile: CourseProfile; readonly filled: Filled }
  | { readonly ok: false; readonly problem: TrackProblem };

/** A place along the course and its height, both in m. */
type Along = readonly [distance: number, height: number];

/** The profile of a track of 100 m to 50 km with two heights at least, in the track's own direction. */
export function trackProfile(segments: TrackSegments): TrackProfile {
  const { points, gaps, gapLength } = measured(segments);
  const length = points.at(-1)?.distance ?? 0;
  const heights = knownHeights(points);
  if (points.length > 0 && heights.length < 2) return { ok: false, problem: { type: "no height" } };
  if (length < SHORTEST_TRACK) return { ok: false, problem: { type: "too short", length } };
  if (length > LONGEST_COURSE) return { ok: false, problem: { type: "too long", length } };
  const withoutHeight = points.filter(({ height }) => height === undefined).length;
  const smooth = smoothed(heights, length);
  const count = Math.min(MOST_PROFILE_POINTS, Math.floor(length / SPACING) + 1);
  const profile = {
    points: evenly(smooth, length, count).map(([at, height]) => [round(at, 10), round(height, 100)] as const),
  };
  return { ok: true, profile, filled: { gaps, gapLength, withoutHeight } };
}

interface Measured {
  readonly points: readonly { readonly distance: number; readonly height: TrackPoint["height"] }[];
  readonly gaps: number;
  readonly gapLength: number;
}

function measured(segments: TrackSegments): Measured {
  const points: Measured["points"][number][] = [];
  let previous: TrackPoint | undefined;
  let distance = 0;
  let gaps = 0;
  let gapLength = 0;
  for (const segment of segments) {
    for (const [index, point] of segment.entries()) {
      const step = previous ? geodesicDistance(previous, point) : 0;
      if (previous && index === 0) {
        gaps += 1;
        gapLength += step;
      }
      distance += step;
      points.push({ distance, height: point.height });
      previous = point;
    }
  }
  return { points, gaps, gapLength };
}

/** The points with a height, rising in distance: while a receiver stood still, its heights count as their mean. */
function knownHeights(points: Measured["points"]): readonly Along[] {
  const known: { distance: number; sum: number; count: number }[] = [];
  for (const { distance, height } of points) {
    if (height === undefined) continue;
    const last = known.at(-1);
    if (last?.distance === distance) {
      last.sum += height;
      last.count += 1;
    } else known.push({ distance, sum: height, count: 1 });
  }
  return known.map(({ distance, sum, count }) => [distance, sum / count]);
}

function smoothed(heights: readonly Along[], length: number): readonly Along[] {
  const samples = evenly(heights, length, Math.ceil(length / SAMPLING) + 1);
  const half = Math.round(SMOOTHED_OVER / 2 / (length / (samples.length - 1)));
  return samples.map(([at], index) => [at, fitted(samples.slice(Math.max(0, index - half), index + half + 1), at)]);
}

/** The height at `at` of the straight line of least squares through two points or more. */
function fitted(window: readonly Along[], at: number): number {
  const mean = (of: (point: Along) => number): number =>
    window.reduce((sum, point) => sum + of(point), 0) / window.length;
  const middle = mean(([distance]) => distance);
  const height = mean((point) => point[1]);
  const spread = mean(([distance]) => (distance - middle) ** 2);
  return height + (mean((point) => (point[0] - middle) * (point[1] - height)) / spread) * (at - middle);
}

/** `count` (≥ 2) points at even distances from 0 to `length`, straight between the known ones and level beyond them. */
function evenly(known: readonly Along[], length: number, count: number): readonly Along[] {
  let next = 0;
  return Array.from({ length: count }, (_, index): Along => {
    const at = (index * length) / (count - 1);
    while (next < known.length - 1 && (known[next]?.[0] ?? 0) < at) next += 1;
    return [at, heightBetween(known[next - 1], known[next], at)];
  });
}

function heightBetween(before: Along | undefined, after: Along | undefined, at: number): number {
  if (!after) throw new Error("A profile has heights.");
  if (!before || at >= after[0]) return after[1];
  return before[1] + ((at - before[0]) / (after[0] - before[0])) * (after[1] - before[1]);
}

function round(value: number, parts: number): number {
  return Math.round(value * parts) / parts;
}
