/** The service of one rider's bike, as the bench shows it. */
import { type Accessor, createMemo } from "solid-js";
import { serviceStatus, teamServicePlan } from "#core/planning/service-status.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { countingLines, type ServicePartLine, servicePartLines } from "./service-lines.ts";

export interface BikeService {
  readonly parts: Accessor<readonly ServicePartLine[]>;
  /** How the hours come about, one sentence each. */
  readonly counting: Accessor<readonly string[]>;
}

/** What of the bench the service needs. */
export interface ServiceContext {
  readonly mounted: RiderBench["mounted"];
  readonly device: Pick<RiderBench["device"], "ledger">;
  readonly chosen: Pick<RiderBench["chosen"], "programme">;
}

/** The service of the bike on this bench. */
export function createService({ device, mounted, chosen }: ServiceContext): BikeService {
  return {
    parts: createMemo(() => {
      const bike = mounted();
      const ledger = device.ledger();
      return bike ? servicePartLines(ledger, serviceStatus(ledger, bike, chosen.programme()?.weekendId)) : [];
    }),
    counting: createMemo(() => countingLines(teamServicePlan(device.ledger()))),
  };
}
