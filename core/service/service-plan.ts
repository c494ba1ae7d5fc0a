/** How the team counts hours of riding, and after how many of them a part is due. */
import * as z from "zod/mini";
import { type Ground, grounds } from "#core/team/ground.ts";
import type { ServiceWork } from "./service-work.ts";

const weight = z.number().check(z.gt(0), z.lte(10));
const intervalHours = z.number().check(z.gte(1), z.lte(5000));

/** What the team has chosen; each field that is absent stands at its default. */
export const servicePlanSchema = z.object({
  /** Hours of wear that an hour of riding counts as, by ground; above 0, 10 at most. */
  weights: z.optional(z.partialRecord(z.enum(grounds), weight)),
  /** Minutes that a run without a time counts as. */
  minutesPerRun: z.optional(z.number().check(z.gt(0), z.lte(120))),
  bathOilHours: z.optional(intervalHours),
  completeHours: z.optional(intervalHours),
  /** The part of an interval, in parts of 1, from which on the work is due. */
  dueFrom: z.optional(z.number().check(z.gt(0), z.lte(1))),
});
export type ServicePlanChoices = z.infer<typeof servicePlanSchema>;

export interface ServicePlan {
  readonly weights: Readonly<Record<Ground, number>>;
  readonly minutesPerRun: number;
  /** Hours between two services of a work. */
  readonly intervalHours: Readonly<Record<ServiceWork, number>>;
  readonly dueFrom: number;
}

/** Common practice, no source: sooner in dust, wet and mud. The maker's manual comes before all of these. */
export const defaultServicePlan: ServicePlan = {
  weights: { "dry dust": 1.5, dry: 1, damp: 1.2, wet: 1.5, mud: 2 },
  minutesPerRun: 4,
  intervalHours: { "bath oil": 50, complete: 200 },
  dueFrom: 0.9,
};

/** The plan with the team's choices in place of the defaults. */
export function servicePlan(choices: ServicePlanChoices = {}): ServicePlan {
  const { weights, minutesPerRun, intervalHours: intervals, dueFrom } = defaultServicePlan;
  return {
    weights: { ...weights, ...choices.weights },
    minutesPerRun: choices.minutesPerRun ?? minutesPerRun,
    intervalHours: {
      "bath oil": choices.bathOilHours ?? intervals["bath oil"],
      complete: choices.completeHours ?? intervals.complete,
    },
    dueFrom: choices.dueFrom ?? dueFrom,
  };
}
