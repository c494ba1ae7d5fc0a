/** A service that was done, as an entry to write, with what was on the bike. */

import type { Current } from "#core/ledger/ledger.ts";
import type { Service } from "#core/service/service-record.ts";
import { type ServiceWork, worksOf } from "#core/service/service-work.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { valuesOnBike } from "#core/weekend/on-the-bike.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { EntriesResult } from "./entries.ts";
import { serviceKind } from "./service-kinds.ts";

export interface ServiceDone {
  /** A new identifier, unique among the rider's services. */
  readonly id: string;
  readonly mounted: RiderBike;
  readonly place: "fork" | "shock";
  /** The part that was opened, so that the service follows it to another bike. */
  readonly partId?: string | undefined;
  readonly what: ServiceWork;
  /** What is on the bike now: it is written down as it was typed; an adjuster in dispute has nothing to write down. */
  readonly settings: ReadonlyMap<AdjusterPath, Current<Setting>>;
  /** Weighted hours already ridden on a service that was done earlier, 0 to 5000. */
  readonly hoursBefore?: number;
  readonly weekendId?: string;
  readonly note?: string;
}

/** One entry; refused where the part has no such work. */
export function serviceEntries(done: ServiceDone): EntriesResult {
  const { id, mounted, place, partId, what, settings, hoursBefore, weekendId, note } = done;
  const part = mounted.parts[place];
  if (!part || !worksOf(part).includes(what)) {
    return { ok: false, problem: { type: "no such service", place, bike: mounted.bike.name, what } };
  }
  const value: Service = {
    bike: mounted.bikeId,
    place,
    ...(partId !== undefined && { part: partId }),
    what,
    settings: valuesOnBike(settings),
    ...(hoursBefore !== undefined && { hoursBefore }),
    ...(weekendId !== undefined && { weekend: weekendId }),
    ...(note !== undefined && note !== "" && { note }),
  };
  return { ok: true, entries: [{ kind: serviceKind, key: `${mounted.riderId}/${id}`, value }] };
}
