/**
 * What every spring is to the rest of this room: force, rate and energy over
 * the stroke from full extension. A spring knows nothing of the rider on it.
 */
import { type Energy, type Force, type Length, metres, type SpringRate } from "#core/quantity/quantity.ts";
import { within } from "./input.ts";

/** A spring without friction. Every function throws a PhysicsError for a stroke outside 0 to `stroke`. */
export interface Spring {
  /** Full stroke, m. */
  readonly stroke: Length;
  /** Force (N, positive in compression) at the stroke `x` (m) from full extension. */
  force(x: Length): Force;
  /** dF/dx (N/m) at `x`; at a kink, the rate on the side of the longer stroke. */
  rate(x: Length): SpringRate;
  /** Energy (J) taken up from full extension to `x`: the integral of the force. */
  energy(x: Length): Energy;
}

/** One point of a force curve. */
export interface ForcePoint {
  readonly stroke: Length;
  readonly force: Force;
}

/** Force at `points` (2 to 10 000) evenly spaced strokes, both ends included. */
export function forceCurve(spring: Spring, points = 200): ForcePoint[] {
  within("Number of points", points, 2, 10_000);
  const curve = new Array<ForcePoint>(points);
  const last = points - 1;
  for (let index = 0; index < points; index += 1) {
    const stroke = index === last ? spring.stroke : metres((spring.stroke * index) / last);
    curve[index] = { stroke, force: spring.force(stroke) };
  }
  return curve;
}
