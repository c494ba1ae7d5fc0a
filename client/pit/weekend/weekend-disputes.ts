/** Who says what of a weekend and its sessions, where two people have entered different values. */
import { weekend as words } from "#client/text/weekend.ts";
import { formatMoment } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import type { RecordKind } from "#core/ledger/kind.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { knownValue } from "#core/team/roster.ts";
import type { RaceWeekend, Session } from "#core/weekend/race-weekend.ts";
import { sessionKind, venueKind, weekendKind } from "#core/weekend/record-kinds.ts";

type Field = keyof RaceWeekend | keyof Session;

/** One sentence for each claim; none while all agree. */
export function weekendDisputes(ledger: Ledger, weekendId: string): readonly string[] {
  const sessions = ledger.keys(sessionKind, weekendId);
  return [
    ...claimsOf(ledger, weekendKind, weekendId, words.theWeekend),
    ...sessions.flatMap((key) =>
      claimsOf(ledger, sessionKind, key, knownValue(ledger, sessionKind, key)?.name ?? key.slice(weekendId.length + 1)),
    ),
  ];
}

function claimsOf(ledger: Ledger, kind: RecordKind, key: string, where: string): readonly string[] {
  const current = ledger.current(kind, key);
  if (current.state !== "disputed") return [];
  const removed = current.claims.some(({ voided }) => voided !== undefined);
  if (!removed) return Object.entries(current.fields ?? {}).flatMap(([field, claims]) => lines(field, claims));
  return current.claims.map(({ by, voided }) => {
    const who = memberName(ledger, by);
    return voided ? words.saysRemoved(where, who, voided.reason) : words.saysKept(where, who);
  });

  function lines(field: string, claims: readonly LedgerRecord[]): readonly string[] {
    const name = words.fieldNames[field as Field] ?? field;
    return claims.map((claim) =>
      words.says(where, name, memberName(ledger, claim.by), valueText(ledger, field as Field, claim.value)),
    );
  }
}

function valueText(ledger: Ledger, field: Field, value: unknown): string {
  const text = (value as Partial<Record<Field, string>> | undefined)?.[field] ?? "";
  switch (field) {
    case "venue":
      return knownValue(ledger, venueKind, text)?.name ?? text;
    case "startsAt":
      return formatMoment(text);
    case "name":
    case "startsOn":
    case "purpose":
      return text;
  }
}
