import type { Ledger } from "#core/ledger/ledger.ts";
import { serviceKind } from "#core/planning/service-kinds.ts";
import { runKind } from "#core/weekend/record-kinds.ts";

/** Differs from the one before whenever something that concerns this rider's jobs has changed since, and for nothing of another rider's. */
export function riderStamp(ledger: Ledger, riderId: string): string {
  let ofAll = 0;
  let own = 0;
  for (const kind of ledger.registry.kinds) {
    // A run wears the parts of the bike that it was ridden on, and that may be another rider's; a service stays with a
    // part that has gone to another rider's bike since.
    const isRiders = kind.scope === "rider" && kind.kind !== runKind.kind && kind.kind !== serviceKind.kind;
    if (isRiders) own += ledger.stamp(kind, riderId);
    else ofAll += ledger.stamp(kind);
  }
  return `${ofAll}/${own}`;
}
