/** Motion of a mass on a spring and a damper, integrated by a library: the oracle of the drop tests. */
import { Solver } from "odex";

/** m x'' = m g − F(x) − c x', from x = 0 with a speed. */
export interface Motion {
  readonly mass: number;
  readonly gravity: number;
  readonly force: (stroke: number) => number;
  readonly damping: number;
  readonly speed: number;
}

/** Stroke (m) and speed (m/s) at `time` (s). */
export function stateAt(motion: Motion, time: number): { readonly stroke: number; readonly speed: number } {
  if (time === 0) return { stroke: 0, speed: motion.speed };
  const solver = new Solver(2);
  solver.relativeTolerance = 1e-12;
  solver.absoluteTolerance = 1e-12;
  const { y, outcome } = solver.solve(
    (_time, [stroke = 0, speed = 0]) => [
      speed,
      motion.gravity - (motion.force(stroke) + motion.damping * speed) / motion.mass,
    ],
    0,
    [0, motion.speed],
    time,
  );
  const [stroke, speed] = y;
  if (outcome !== 0 || stroke === undefined || speed === undefined)
    throw new Error(`The integration to ${time} s ended with outcome ${outcome}.`);
  return { stroke, speed };
}

/** The first moment (s) at which the mass turns round, and the stroke (m) there: the library has no events, so by bisection. */
export function turningPoint(motion: Motion): { readonly time: number; readonly stroke: number } {
  let before = 0;
  let after = 0.005;
  for (let step = 0; stateAt(motion, after).speed > 0; step += 1) {
    if (step > 400) throw new Error("The mass does not turn round within two seconds.");
    before = after;
    after += 0.005;
  }
  for (let step = 0; step < 45; step += 1) {
    const middle = (before + after) / 2;
    if (stateAt(motion, middle).speed > 0) before = middle;
    else after = middle;
  }
  return { time: before, stroke: stateAt(motion, before).stroke };
}
