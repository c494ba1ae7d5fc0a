/** The claims of a disputed adjuster in words, and settling it. */
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import { provenanceInWords } from "#client/widgets/provenance-in-words.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { Occasion } from "#core/planning/entries.ts";
import { dimensionOf, type TypedQuantity } from "#core/quantity/unit.ts";
import type { Setting } from "#core/weekend/setting.ts";

export interface ClaimLine {
  readonly id: string;
  readonly value: string;
  /** What the claim says is set; undefined when it says that there is no value. */
  readonly setting: Setting | undefined;
  readonly who: string;
  readonly when: string;
  readonly device: string;
  readonly why: string;
}

/** One line for each claim. */
export function claimLines(ledger: Ledger, claims: readonly LedgerRecord<Setting>[]): readonly ClaimLine[] {
  return claims.map((claim) => ({
    id: claim.id,
    value: claim.value ? valueOfClaim(claim.value) : pit.disputes.noValue,
    setting: claim.value,
    who: memberName(ledger, claim.by),
    when: formatMoment(claim.at),
    device: claim.device,
    why:
      provenanceInWords(ledger, claim.cause, claim.value === undefined) ??
      trade.cause({ cause: claim.cause, voided: claim.voided?.reason }),
  }));
}

/** A pressure with the temperature that it was read at: without it, two equal readings could not be told apart. */
function valueOfClaim({ quantity, heldAt }: Setting): string {
  const value = formatQuantity(quantity);
  return heldAt && dimensionOf(quantity.unit) === "pressure"
    ? pit.disputes.readAt(value, formatQuantity(heldAt.temperature))
    : value;
}

/** The setting that a claim makes, once somebody has looked: on the bike, read where the claim says it was read. */
export function settledByClaim(claim: Setting, occasion: Occasion): Setting {
  return { ...claim, standing: "on the bike", ...placeOf(occasion) };
}

/** The setting that somebody read off the bike just now. */
export function settledByReading(quantity: TypedQuantity, occasion: Occasion): Setting {
  return {
    quantity,
    standing: "on the bike",
    ...(occasion.heldAt && { heldAt: occasion.heldAt }),
    ...placeOf(occasion),
  };
}

function placeOf({ weekendId, sessionId }: Occasion): Pick<Setting, "weekend" | "session"> {
  return { weekend: weekendId, ...(sessionId !== undefined && { session: sessionId }) };
}
