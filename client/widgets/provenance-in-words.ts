/** Where a value came from that nobody chose on this bike, in words. */
import { spareBike as words } from "#client/text/spare-bike.ts";
import type { Cause } from "#core/ledger/cause.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { provenanceOf } from "#core/team/provenance.ts";
import { bikeKind, partKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";

/** A sentence for a copied value, or for what a moved part brought or took; undefined for every other cause. */
export function provenanceInWords(ledger: Ledger, cause: Cause | undefined, isGone: boolean): string | undefined {
  const provenance = provenanceOf(cause);
  switch (provenance?.type) {
    case undefined:
      return undefined;
    case "copy":
      return words.copy.why(bikeName(ledger, provenance.bike));
    case "part moved": {
      const part = partName(ledger, provenance.part);
      return isGone ? words.move.whyGone(part) : words.move.why(part);
    }
  }
}

/** The name of a bike; the id while nothing else is known. */
export function bikeName(ledger: Ledger, bikeId: string): string {
  return knownValue(ledger, bikeKind, bikeId)?.name ?? bikeId;
}

/** The name of a part; the id while nothing else is known. */
export function partName(ledger: Ledger, partId: string): string {
  return knownValue(ledger, partKind, partId)?.name ?? partId;
}
