/**
 * What a profile says of the course.
 *
 *   gradient = fall / horizontal distance     of a piece between two points of the profile; above 0 downhill
 *   steep share = Σ steep pieces / length     steep is a piece with a gradient of STEEP_FROM or more
 *   slope length = Σ √(distance² + fall²)     what a wheel rolls over, m
 *
 * All of it follows from the profile alone, so that every device that has the record derives the same.
 */
import type { CourseProfile } from "#core/weekend/course-shape.ts";

/**
 * From which gradient on a piece counts as steep: 25 m of fall in 100 m, about 14°. Our own rule, no source: a rider
 * there hangs on the front brake, and the fork carries more than on level ground.
 */
export const STEEP_FROM = 0.25;

/** How fine a proposal is: the steps in which the parts of a course are entered. */
const PROPOSAL_STEP = 0.05;

export interface CourseFacts {
  /** Horizontal, along the ellipsoid, m. */
  readonly length: number;
  readonly slopeLength: number;
  /** Height of the start less that of the finish, m; below 0 where the line goes uphill. */
  readonly drop: number;
  /** All that goes up on the way, m; drop + climb is all that goes down. */
  readonly climb: number;
  readonly highest: number;
  readonly lowest: number;
  readonly meanGradient: number;
  /** The steepest piece downhill. */
  readonly steepest: Piece;
  /** By length, 0 to 1. */
  readonly steepShare: number;
  /** Where it is steep, pieces that touch put together. */
  readonly steep: readonly Stretch[];
}

/** From where to where along the course, m. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

export interface Piece extends Stretch {
  readonly gradient: number;
}

export function courseFacts(profile: CourseProfile): CourseFacts {
  const all = pieces(profile);
  const heights = profile.points.map(([, height]) => height);
  const length = profile.points.at(-1)?.[0] ?? 0;
  const drop = (heights[0] ?? 0) - (heights.at(-1) ?? 0);
  const steep: Stretch[] = [];
  for (const { from, to, gradient } of all) {
    if (gradient < STEEP_FROM) continue;
    const last = steep.at(-1);
    if (last?.to === from) steep[steep.length - 1] = { from: last.from, to };
    else steep.push({ from, to });
  }
  return {
    length,
    slopeLength: sum(all.map(({ from, to, gradient }) => (to - from) * Math.hypot(1, gradient))),
    drop,
    climb: sum(all.map(({ from, to, gradient }) => Math.max(0, -gradient * (to - from)))),
    highest: Math.max(...heights),
    lowest: Math.min(...heights),
    meanGradient: drop / length,
    steepest: all.reduce((most, piece) => (piece.gradient > most.gradient ? piece : most)),
    steepShare: sum(steep.map(({ from, to }) => to - from)) / length,
    steep,
  };
}

/** The steep part to propose for a course's mix, 0 to 1: the share in steps of 0.05. */
export function proposedSteepPart(steepShare: number): number {
  return Number((Math.round(steepShare / PROPOSAL_STEP) * PROPOSAL_STEP).toFixed(2));
}

/** The same course ridden the other way. */
export function reversedProfile({ points }: CourseProfile): CourseProfile {
  const length = points.at(-1)?.[0] ?? 0;
  return { points: points.map(([at, height]) => [Math.round((length - at) * 10) / 10, height] as const).reverse() };
}

function pieces({ points }: CourseProfile): readonly Piece[] {
  return points.slice(1).map(([to, height], index) => {
    const [from, before] = points[index] ?? [0, 0];
    return { from, to, gradient: (before - height) / (to - from) };
  });
}

function sum(values: readonly number[]): number {
  return values.reduce((total, value) => total + value, 0);
}
