/** How service stands on a bike's parts, put together from the records. */
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { onceForEachState } from "#core/ledger/once-for-each-state.ts";
import { type DoneService, partService, type WorkStatus } from "#core/service/part-service.ts";
import { type RiddenRun, ridingRate } from "#core/service/riding-hours.ts";
import { type ServicePlan, servicePlan } from "#core/service/service-plan.ts";
import type { ServiceState } from "#core/service/service-state.ts";
import type { Part } from "#core/team/part.ts";
import { partStays, type Stay, wasOn } from "#core/team/part-stays.ts";
import { placesOf } from "#core/team/parts-on-bike.ts";
import { knownValue, type RiderBike } from "#core/team/roster.ts";
import { conditionsKind, runKind } from "#core/weekend/record-kinds.ts";
import { serviceKind, servicePlanKind } from "./service-kinds.ts";

/** A part that has service: a fork or a shock. */
export interface PartServiceStatus {
  readonly place: "fork" | "shock";
  readonly part: Part;
  readonly partId: string;
  /** That of its work which stands worst. */
  readonly state: ServiceState;
  readonly works: readonly WorkStatus[];
}

/** The team's plan; while a field of it is in dispute, as it was last agreed. */
export function teamServicePlan(ledger: Ledger): ServicePlan {
  return servicePlan(knownValue(ledger, servicePlanKind, "team"));
}

/** The runs on each bike, by bike, whoever rode it. */
export const runsByBike = onceForEachState(
  [runKind, conditionsKind],
  (ledger): ReadonlyMap<string, readonly RiddenRun[]> => {
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
  },
);

/** All services that are written down and not taken back, oldest first. */
export const allServices = onceForEachState([serviceKind], (ledger): readonly DoneService[] =>
  ledger
    .keys(serviceKind)
    .flatMap((key): readonly DoneService[] => {
      const service = settledValue(ledger.current(serviceKind, key));
      const first = ledger.history(serviceKind, key)[0];
      if (!service || !first) return [];
      return [{ id: key.slice(key.indexOf("/") + 1), at: Date.parse(first.at), by: first.by, service }];
    })
    .sort((a, b) => a.at - b.at || (a.id < b.id ? -1 : 1)),
);

/** A part with the bikes that it was on. */
export interface PartOnItsWay {
  readonly partId: string;
  readonly place: Part["place"];
  readonly stays: readonly Stay[];
}

/** The runs that a part was ridden on, on whichever bike it was then. */
export function runsOfPart(
  { stays }: Pick<PartOnItsWay, "stays">,
  runs: ReadonlyMap<string, readonly RiddenRun[]>,
): readonly RiddenRun[] {
  const bikes = new Set(stays.flatMap(({ bikeId }) => bikeId ?? []));
  return [...bikes].flatMap((bikeId) => (runs.get(bikeId) ?? []).filter(({ at }) => wasOn(stays, bikeId, at)));
}

/** The services of a part: those that name it, and those of its place while it was there that name none. */
export function servicesOfPart(
  { partId, place, stays }: PartOnItsWay,
  services: readonly DoneService[],
): readonly DoneService[] {
  return services.filter(({ at, service }) =>
    service.part === undefined ? service.place === place && wasOn(stays, service.bike, at) : service.part === partId,
  );
}

/**
 * The parts of `mounted` that have service, fork first; hours and services are those of the part, also from other bikes.
 * @param weekendId the weekend whose runs tell how fast hours come together
 * @param runs of all bikes, when they are known already
 */
export function serviceStatus(
  ledger: Ledger,
  mounted: Pick<RiderBike, "bikeId" | "bike">,
  weekendId: string | undefined,
  runs: ReadonlyMap<string, readonly RiddenRun[]> = runsByBike(ledger),
): readonly PartServiceStatus[] {
  const plan = teamServicePlan(ledger);
  const services = allServices(ledger);
  const rate = ridingRate(runs.get(mounted.bikeId) ?? [], weekendId, plan);
  const on = placesOf(ledger, mounted.bikeId, mounted.bike);
  return (["fork", "shock"] as const).flatMap((place): readonly PartServiceStatus[] => {
    const at = on[place];
    if (at.state !== "mounted") return [];
    const { part, partId } = at;
    const onItsWay = { partId, place, stays: partStays(ledger, partId, mounted.bikeId) };
    const works = partService(part, runsOfPart(onItsWay, runs), servicesOfPart(onItsWay, services), plan, rate);
    return works.length > 0 ? [{ place, part, partId, state: worstOf(works), works }] : [];
  });
}

function worstOf(works: readonly WorkStatus[]): ServiceState {
  const states = works.map(({ state }) => state);
  return states.includes("overdue") ? "overdue" : states.includes("due") ? "due" : "in use";
}
