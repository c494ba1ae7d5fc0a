/**
 * What can be set, felt, and changed at a time on an adjuster whose maker and
 * team have said nothing else. Common practice, no source: 1 to 2 psi in either
 * chamber of a fork is felt, 5 psi in the main and 10 psi in the secondary
 * chamber are drastic.
 */
import type { Unit } from "#core/quantity/unit.ts";
import type { Adjuster, AdjusterKind } from "./adjuster.ts";

/** The unit that the sizes are in, and the three sizes of an adjuster. */
export type AdjusterSizes = Pick<Adjuster, "unit" | "step" | "felt" | "large">;

const clicks: AdjusterSizes = { unit: "clicks", step: 1, felt: 1, large: 3 };

const sizes: Readonly<Record<AdjusterKind, readonly AdjusterSizes[]>> = {
  "main-pressure": [
    { unit: "psi", step: 0.5, felt: 2, large: 5 },
    { unit: "bar", step: 0.05, felt: 0.15, large: 0.35 },
    { unit: "kPa", step: 5, felt: 15, large: 35 },
  ],
  "secondary-pressure": [
    { unit: "psi", step: 1, felt: 2, large: 10 },
    { unit: "bar", step: 0.05, felt: 0.15, large: 0.7 },
    { unit: "kPa", step: 5, felt: 15, large: 70 },
  ],
  "volume-spacers": [{ unit: "spacers", step: 1, felt: 1, large: 1 }],
  "spring-rate": [
    { unit: "N/mm", step: 5, felt: 5, large: 10 },
    { unit: "lbf/in", step: 25, felt: 25, large: 50 },
  ],
  preload: [{ unit: "turns", step: 0.25, felt: 0.5, large: 1 }],
  rebound: [clicks],
  "low-speed-compression": [clicks],
  "high-speed-compression": [clicks],
  "tyre-pressure": [
    { unit: "psi", step: 0.5, felt: 1, large: 3 },
    { unit: "bar", step: 0.05, felt: 0.1, large: 0.2 },
    { unit: "kPa", step: 5, felt: 10, large: 20 },
  ],
};

/** The default sizes of an adjuster of `kind` that is read in `unit`; undefined when it cannot be read in that. */
export function defaultSizes(kind: AdjusterKind, unit: Unit): AdjusterSizes | undefined {
  return sizes[kind].find((entry) => entry.unit === unit);
}
