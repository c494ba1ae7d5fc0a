/**
 * How far a spring goes when a mass lands on it.
 *
 *   E(x) = m v² / 2 + m g x
 *
 * m mass, kg · v speed along the spring when it starts to give, m/s (after a
 * free fall of h: v² = 2 g h) · x stroke, m · g standard gravity. Source:
 * conservation of energy. Without damper and friction, so an upper bound.
 */
import { STANDARD_GRAVITY } from "#core/quantity/constants.ts";
import { type Length, type Mass, metres, newtons } from "#core/quantity/quantity.ts";
import { notNegative, positive } from "./input.ts";
import { notPossible, type Possible, possible } from "./problem.ts";
import { staticSag } from "./sag.ts";
import { solveBracketed } from "./solve.ts";
import type { Spring } from "./spring.ts";

/**
 * The greatest stroke (m) of `spring` when `mass` (kg, > 0) meets it at full extension with `speed` (m/s, ≥ 0).
 * "bottoms out" when the full stroke does not stop it.
 */
export function dropStroke(drop: {
  readonly spring: Spring;
  readonly mass: Mass;
  readonly speed: number;
}): Possible<Length> {
  const { spring } = drop;
  const mass = positive("Mass in kg", drop.mass);
  const weight = newtons(mass * STANDARD_GRAVITY);
  const motion = (mass * notNegative("Speed in m/s", drop.speed) ** 2) / 2;
  const excess = (x: number): number => spring.energy(metres(x)) - weight * x - motion;
  const rest = staticSag(spring, weight);
  if (!rest.possible && rest.reason === "bottoms out") return notPossible("bottoms out");
  const stroke = solveBracketed(excess, rest.possible ? rest.value : 0, spring.stroke);
  return stroke === undefined ? notPossible("bottoms out") : possible(metres(stroke));
}
