/**
 * A rear linkage, given as leverage ratios over the travel of the wheel.
 *
 *   LR = dw / ds      s(w) = ∫ dw / LR
 *
 * w wheel travel, m · s stroke of the shock, m · LR leverage ratio. Between two
 * points LR is a straight line over w, so between points i and i + 1, with
 * slope b and LR_i at w_i:
 *
 *   s − s_i = ln(1 + b (w − w_i) / LR_i) / b      w − w_i = LR_i (e^(b (s − s_i)) − 1) / b
 *
 * Source: virtual work; the integrals are calculus. Both are exact, so stroke,
 * travel and energy agree to rounding, and no curve overshoots its points.
 */
import { type Length, metres } from "#core/quantity/quantity.ts";
import { finite, notNegative, positive, within } from "./input.ts";
import { PhysicsError } from "./problem.ts";

/** One point of a leverage curve. */
export interface LeveragePoint {
  /** Travel of the wheel from full extension, m. */
  readonly wheelTravel: Length;
  /** Wheel travel for each unit of shock stroke there, > 0. */
  readonly leverageRatio: number;
}

/** A linkage. Every function throws a PhysicsError outside its travel or stroke. */
export interface Linkage {
  /** Full travel of the wheel, m. */
  readonly wheelTravel: Length;
  /** Stroke of the shock at full travel, m. */
  readonly shockStroke: Length;
  /** Shock stroke (m) at a wheel travel (m). */
  shockStrokeAt(wheelTravel: Length): Length;
  /** Wheel travel (m) at a shock stroke (m). */
  wheelTravelAt(shockStroke: Length): Length;
  /** Leverage ratio at a wheel travel (m). */
  leverageRatioAt(wheelTravel: Length): number;
  /** dLR/dw (1/m) at a wheel travel (m); at a point, on the side of the longer travel. */
  leverageSlopeAt(wheelTravel: Length): number;
}

interface Segment {
  readonly travel: number;
  readonly stroke: number;
  readonly ratio: number;
  readonly slope: number;
}

/** How far the stroke that a leverage curve integrates to may be from the shock's own: points are read off a chart. */
const DEFAULT_STROKE_TOLERANCE = 0.02;

/**
 * The linkage through `points`: two or more, rising in travel, the first at 0.
 * @param shock the shock's own stroke (m), when it is known: the curve must integrate to it within
 *   `tolerance` (a part of it; 0.02 when absent).
 * @throws PhysicsError for points out of order, a ratio not above 0, or a curve that does not fit the stroke.
 */
export function createLinkage(
  points: readonly LeveragePoint[],
  shock?: { readonly stroke: Length; readonly tolerance?: number },
): Linkage {
  const segments = segmentsOf(points);
  const wheelTravel = metres(points.at(-1)?.wheelTravel ?? 0);
  const shockStroke = metres(strokeIn(segmentOf(segments, "travel", wheelTravel), wheelTravel));
  if (shock !== undefined) checkStroke(shockStroke, shock.stroke, shock.tolerance ?? DEFAULT_STROKE_TOLERANCE);

  const segmentAt = (travel: number): Segment =>
    segmentOf(segments, "travel", within("Wheel travel in m", travel, 0, wheelTravel));
  return {
    wheelTravel,
    shockStroke,
    shockStrokeAt: (travel) => metres(Math.min(shockStroke, strokeIn(segmentAt(travel), travel))),
    wheelTravelAt(stroke) {
      const segment = segmentOf(segments, "stroke", within("Shock stroke in m", stroke, 0, shockStroke));
      return metres(Math.min(wheelTravel, travelIn(segment, stroke)));
    },
    leverageRatioAt(travel) {
      const segment = segmentAt(travel);
      return segment.ratio + segment.slope * (travel - segment.travel);
    },
    leverageSlopeAt: (travel) => segmentAt(travel).slope,
  };
}

/** A linkage with one leverage ratio throughout, from full travel and full stroke (m, both > 0): all that is known of many a bike. */
export function constantLinkage(wheelTravel: Length, shockStroke: Length): Linkage {
  const leverageRatio = positive("Wheel travel in m", wheelTravel) / positive("Shock stroke in m", shockStroke);
  return createLinkage([
    { wheelTravel: metres(0), leverageRatio },
    { wheelTravel, leverageRatio },
  ]);
}

function segmentsOf(points: readonly LeveragePoint[]): Segment[] {
  if (points.length < 2)
    throw new PhysicsError("points out of order", "A leverage curve needs two points or more.", {
      points: points.length,
    });
  const segments: Segment[] = [];
  let stroke = 0;
  for (const [index, point] of points.entries()) {
    const travel = notNegative("Wheel travel in m", point.wheelTravel);
    const ratio = positive("Leverage ratio", point.leverageRatio);
    const next = points[index + 1];
    if (index === 0 && travel !== 0)
      throw new PhysicsError("points out of order", "The first point of a leverage curve must be at no travel.", {
        travel,
      });
    if (next === undefined) break;
    const length = finite("Wheel travel in m", next.wheelTravel) - travel;
    if (length <= 0)
      throw new PhysicsError("points out of order", "The points of a leverage curve must rise in wheel travel.", {
        travel,
        next: next.wheelTravel,
      });
    const segment = { travel, stroke, ratio, slope: (positive("Leverage ratio", next.leverageRatio) - ratio) / length };
    segments.push(segment);
    stroke = strokeIn(segment, next.wheelTravel);
  }
  return segments;
}

function segmentOf(segments: readonly Segment[], along: "travel" | "stroke", value: number): Segment {
  const segment = segments.findLast((candidate) => candidate[along] <= value) ?? segments[0];
  if (segment === undefined) throw new Error("A linkage without segments cannot have been created.");
  return segment;
}

function strokeIn(segment: Segment, travel: number): number {
  const length = (travel - segment.travel) / segment.ratio;
  const growth = segment.slope * length;
  return segment.stroke + length * (growth === 0 ? 1 : Math.log1p(growth) / growth);
}

function travelIn(segment: Segment, stroke: number): number {
  const length = stroke - segment.stroke;
  const growth = segment.slope * length;
  return segment.travel + segment.ratio * length * (growth === 0 ? 1 : Math.expm1(growth) / growth);
}

function checkStroke(integrated: number, own: number, tolerance: number): void {
  if (Math.abs(integrated / positive("Shock stroke in m", own) - 1) <= notNegative("Tolerance", tolerance)) return;
  const millimetres = (value: number) => `${(value * 1000).toFixed(1)} mm`;
  throw new PhysicsError(
    "leverage does not fit stroke",
    `These leverage ratios need ${millimetres(integrated)} of shock stroke for the full travel; ` +
      `the shock has ${millimetres(own)}.`,
    { integrated, own, tolerance },
  );
}
