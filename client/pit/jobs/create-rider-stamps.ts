/** What has changed since one looked last, rider by rider, so that a record of one rider does not cost the others' work. */
import { type Accessor, createSignal, onCleanup } from "solid-js";
import type { Ledger } from "#core/ledger/ledger.ts";
import { splitSubject } from "#core/ledger/record.ts";
import { serviceKind } from "#core/planning/service-kinds.ts";
import { runKind } from "#core/weekend/record-kinds.ts";

export interface RiderStamps {
  /** Reading it inside a computation runs that again when records change, and after the stamps have. */
  readonly changed: Accessor<number>;
  /** Differs from the one before whenever something that concerns this rider has changed since. */
  stampOf(riderId: string): string;
}

/** The stamps of a ledger. They end with their owner. */
export function createRiderStamps(ledger: Ledger): RiderStamps {
  const [changed, setChanged] = createSignal(0);
  const byRider = new Map<string, number>();
  let ofAll = 0;
  onCleanup(
    ledger.onChange((subjects) => {
      for (const subject of subjects) {
        const { kind, key } = splitSubject(subject);
        // A run wears the parts of the bike that it was ridden on, and that may be another rider's; a service stays with a
        // part that has gone to another rider's bike since.
        const isOfAll = kind === runKind.kind || kind === serviceKind.kind;
        const isRiders = ledger.registry.find(kind)?.scope === "rider" && !isOfAll;
        const riderId = key.slice(0, Math.max(0, key.indexOf("/")));
        if (isRiders) byRider.set(riderId, (byRider.get(riderId) ?? 0) + 1);
        else ofAll += 1;
      }
      setChanged((count) => count + 1);
    }),
  );
  return { changed, stampOf: (riderId) => `${ofAll}/${byRider.get(riderId) ?? 0}` };
}
