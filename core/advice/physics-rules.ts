/** The corrections that physics works out, in words for the rule book. The computation is in physics-corrections.ts. */
import type { Provenance } from "./reason.ts";

export interface PhysicsRule {
  readonly id: string;
  /** When it speaks: one phrase. */
  readonly when: string;
  /** What it does: one phrase. */
  readonly move: string;
  readonly reason: string;
  readonly provenance: Provenance;
}

export const physicsRules: readonly PhysicsRule[] = [
  {
    id: "own-baseline",
    when: "the course is of one type that the rider has a baseline for",
    move: "take the baseline as it is",
    reason: "The rider's own known-good setup is the best start there is.",
    provenance: "own baseline",
  },
  {
    id: "blend",
    when: "the course is a mix of types",
    move: "blend the rider's baselines by how much of the course is of each type",
    reason: "Between two known-good setups lies a good one.",
    provenance: "blend of own baselines",
  },
  {
    id: "rider-mass",
    when: "the rider's mass is another than at the baseline",
    move: "main pressure, or spring rate, so that the sag stays",
    reason: "The same sag keeps the bike in the part of its travel that the rider knows.",
    provenance: "physics",
  },
  {
    id: "altitude",
    when: "the altitude is another than at the baseline",
    move: "main pressure, so that the support late in the stroke stays",
    reason: "Thinner air around the spring makes the same gauge pressure less progressive.",
    provenance: "physics",
  },
  {
    id: "rebound-follows",
    when: "the spring's rate at sag has changed by a click's worth or more",
    move: "rebound by the clicks that keep the baseline's damping ratio",
    reason: "A stiffer spring wants more rebound damping, a softer one less.",
    provenance: "physics",
  },
  {
    id: "temperature",
    when: "the bench is colder or warmer than the session",
    move: "every pressure, by the gas law at constant volume, so that it is right at the session",
    reason: "A pressure set in the cool of the morning reads higher in the heat of the race.",
    provenance: "physics",
  },
];
