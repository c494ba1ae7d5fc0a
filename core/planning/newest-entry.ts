/** How new what a device holds is: a printed page says it, since it cannot learn anything later. */
import type { Ledger } from "#core/ledger/ledger.ts";

/** The time of the newest entry that stands, by its writer's clock (ISO 8601, informative only); undefined while there is none. */
export function newestEntry(ledger: Ledger): string | undefined {
  let newest: string | undefined;
  for (const kind of ledger.registry.kinds) {
    for (const key of ledger.keys(kind)) {
      for (const { at } of ledger.heads(kind, key)) if (newest === undefined || at > newest) newest = at;
    }
  }
  return newest;
}
