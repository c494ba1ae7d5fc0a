/** How each work of service stands on one part. */
import type { Part } from "#core/team/part.ts";
import { type RiddenRun, type RidingRate, sumOfHours } from "./riding-hours.ts";
import type { ServicePlan } from "./service-plan.ts";
import type { Service } from "./service-record.ts";
import { type Remaining, remaining, type ServiceState, serviceState } from "./service-state.ts";
import { resets, type ServiceWork, worksOf } from "./service-work.ts";

/** A service that was done, with when it was written down (ms since 1970). */
export interface DoneService {
  readonly id: string;
  readonly at: number;
  /** Who wrote it down. */
  readonly by: string;
  readonly service: Service;
}

export interface WorkStatus {
  readonly work: ServiceWork;
  /** Weighted hours since it was last done; since the first run where it never was. */
  readonly usedHours: number;
  readonly limitHours: number;
  readonly state: ServiceState;
  /** What can be ridden until it is due. */
  readonly untilDue: Remaining;
  /** What can be ridden until the interval is over. */
  readonly untilLimit: Remaining;
  /** The service that set the hours back; undefined where none is written down. */
  readonly last: DoneService | undefined;
}

/**
 * The works of `part`, in the order of {@link worksOf}.
 *
 * Whether a run was ridden before a service or after it, its writers' clocks tell: nothing else knows when a hand was at
 * the part. Written down in the same moment, the run counts as ridden after it, since too many hours do no harm.
 * @param runs all runs that the part was ridden on
 * @param services all services of the part; those of another place are left out
 */
export function partService(
  part: Part,
  runs: readonly RiddenRun[],
  services: readonly DoneService[],
  plan: ServicePlan,
  rate: RidingRate,
): readonly WorkStatus[] {
  const ofPart = services.filter(({ service }) => service.place === part.place);
  return worksOf(part).map((work) => {
    const last = latest(ofPart.filter(({ service }) => resets(service.what, work)));
    const since = last === undefined ? runs : runs.filter(({ at }) => at >= last.at);
    const usedHours = (last?.service.hoursBefore ?? 0) + sumOfHours(since, plan);
    const limitHours = plan.intervalHours[work];
    return {
      work,
      usedHours,
      limitHours,
      state: serviceState(usedHours, limitHours, plan.dueFrom),
      untilDue: remaining(usedHours, limitHours * plan.dueFrom, rate),
      untilLimit: remaining(usedHours, limitHours, rate),
      last,
    };
  });
}

function latest(services: readonly DoneService[]): DoneService | undefined {
  return services.reduce<DoneService | undefined>(
    (last, done) =>
      last === undefined || done.at > last.at || (done.at === last.at && done.id > last.id) ? done : last,
    undefined,
  );
}
