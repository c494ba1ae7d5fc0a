/** Where a value came from that nobody chose on this bike, in words. */
import { spareBike as words } from "#client/text/spare-bike.ts";
import type { Cause } from "#core/ledger/cause.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { provenanceOf } from "#core/team/provenance.ts";
import { bikeName, partName } from "./names.ts";

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
