/** How service stands on a bike's parts, put together from the records. */
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { type DoneService, partService, type WorkStatus } from "#core/service/part-service.ts";
import { type RiddenRun, ridingRate } from "#core/service/riding-hours.ts";
import { type ServicePlan, servicePlan } from "#core/service/service-plan.ts";
import type { ServiceState } from "#core/service/service-state.ts";
import type { Part } from "#core/team/part.ts";
import { knownValue, type RiderBike } from "#core/team/roster.ts";
import { conditionsKind, runKind } from "#core/weekend/record-kinds.ts";
import { serviceKind, servicePlanKind } from "./service-kinds.ts";

/** A part that has service: a fork or a shock. */
export interface PartServiceStatus {
  readonly place: "fork" | "shock";
  readonly part: Part;
  /** That of its work which stands worst. */
  readonly state: ServiceState;
  readonly works: readonly WorkStatus[];
}

/** The team's plan; while a field of it is in dispute, as it was last agreed. */
export function teamServicePlan(ledger: Ledger): ServicePlan {
  return servicePlan(knownValue(ledger, servicePlanKind, "team"));
}

/** The runs on each bike, by bike, whoever rode it. */
export function runsByBike(ledger: Ledger): ReadonlyMap<string, readonly RiddenRun[]> {
  const byBike = new Map<string, RiddenRun[]>();
  for (const key of ledger.keys(runKind)) {
    const run = knownValue(ledger, runKind, key);
    const first = ledger.history(runKind, key)[0];
    if (!run || !first) continue;
    const ridden: RiddenRun = {
      weekend: run.weekend,
      session: run.session,
      at: Date.parse(first.at),
      timeSeconds: run.timeSeconds,
      ground: knownValue(ledger, conditionsKind, `${run.weekend}/${run.session}`)?.ground,
    };
    const known = byBike.get(run.bike);
    if (known) known.push(ridden);
    else byBike.set(run.bike, [ridden]);
  }
  return byBike;
}

/** The services of a bike that are written down and not taken back, oldest first. */
export function servicesOf(ledger: Ledger, bikeId: string): readonly DoneService[] {
  return ledger
    .keys(serviceKind)
    .flatMap((key): readonly DoneService[] => {
      const service = settledValue(ledger.current(serviceKind, key));
      const first = ledger.history(serviceKind, key)[0];
      if (!service || !first || service.bike !== bikeId) return [];
      return [{ id: key.slice(key.indexOf("/") + 1), at: Date.parse(first.at), by: first.by, service }];
    })
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1));
}

/**
 * The parts of `mounted` that have service, fork first.
 * @param weekendId the weekend whose runs tell how fast hours come together
 * @param runs of all bikes, when they are known already
 */
export function serviceStatus(
  ledger: Ledger,
  mounted: Pick<RiderBike, "bikeId" | "parts">,
  weekendId: string | undefined,
  runs: ReadonlyMap<string, readonly RiddenRun[]> = runsByBike(ledger),
): readonly PartServiceStatus[] {
  const plan = teamServicePlan(ledger);
  const ridden = runs.get(mounted.bikeId) ?? [];
  const services = servicesOf(ledger, mounted.bikeId);
  const rate = ridingRate(ridden, weekendId, plan);
  return (["fork", "shock"] as const).flatMap((place): readonly PartServiceStatus[] => {
    const part = mounted.parts[place];
    const works = part ? partService(part, ridden, services, plan, rate) : [];
    return part && works.length > 0 ? [{ place, part, state: worstOf(works), works }] : [];
  });
}

function worstOf(works: readonly WorkStatus[]): ServiceState {
  const states = works.map(({ state }) => state);
  return states.includes("overdue") ? "overdue" : states.includes("due") ? "due" : "in use";
}
