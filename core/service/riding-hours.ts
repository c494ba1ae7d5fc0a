/**
 * Hours of riding, weighted by what they do to a part:
 *
 *   h = w t
 *
 * where h are weighted hours, w is the weight of the session's ground, and t the run's time in hours; a run without a
 * time counts as the plan's minutes. A ground that nobody has entered counts as dry. Common practice, no source.
 */
import type { Ground } from "#core/team/ground.ts";
import type { ServicePlan } from "./service-plan.ts";

/** A run as far as wear goes. */
export interface RiddenRun {
  readonly weekend: string;
  readonly session: string;
  /** When it was logged, ms since 1970: before or after a service. */
  readonly at: number;
  readonly timeSeconds: number | undefined;
  /** The ground of its session; undefined while nobody has entered it. */
  readonly ground: Ground | undefined;
}

/** Weighted hours of one run; above 0. */
export function weightedHours({ timeSeconds, ground }: RiddenRun, plan: ServicePlan): number {
  const hours = timeSeconds === undefined ? plan.minutesPerRun / 60 : timeSeconds / 3600;
  return hours * plan.weights[ground ?? "dry"];
}

/** Weighted hours of several runs; 0 for none. */
export function sumOfHours(runs: readonly RiddenRun[], plan: ServicePlan): number {
  return runs.reduce((sum, run) => sum + weightedHours(run, plan), 0);
}

/** How fast hours come together. */
export interface RidingRate {
  /** Weighted hours; above 0. */
  readonly hoursPerRun: number;
  /** Undefined while no run tells how many a session has. */
  readonly runsPerSession: number | undefined;
}

/** The rate of one weekend; before its first run, runs without a time on dry ground. */
export function ridingRate(runs: readonly RiddenRun[], weekend: string | undefined, plan: ServicePlan): RidingRate {
  const ridden = runs.filter((run) => run.weekend === weekend);
  if (ridden.length === 0) {
    return { hoursPerRun: (plan.minutesPerRun / 60) * plan.weights.dry, runsPerSession: undefined };
  }
  const sessions = new Set(ridden.map(({ session }) => session)).size;
  return { hoursPerRun: sumOfHours(ridden, plan) / ridden.length, runsPerSession: ridden.length / sessions };
}
