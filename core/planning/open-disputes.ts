/** The disputes that somebody still has to settle. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { sentBackKind } from "#core/team/record-kinds.ts";
import { riderBike } from "#core/team/roster.ts";
import { type Dispute, disputes } from "#core/weekend/disputes.ts";
import { standingSendBacks } from "./sent-back.ts";

/** All open disputes, by kind and key; of notes to a setup only while they are about the setup on the bike. */
export function openDisputes(ledger: Ledger): readonly Dispute[] {
  return disputes(ledger).filter(
    (dispute) => dispute.kind !== sentBackKind.kind || isStandingSendBack(ledger, dispute),
  );
}

function isStandingSendBack(ledger: Ledger, { key, claims }: Dispute): boolean {
  const mounted = riderBike(ledger, key.slice(0, key.indexOf("/")));
  const standing = mounted ? standingSendBacks(ledger, mounted).map(({ record }) => record.id) : [];
  return claims.some(({ id }) => standing.includes(id));
}
