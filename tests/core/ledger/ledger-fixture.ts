import * as z from "zod/mini";
import { createKindRegistry, defineKind } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { createWriter, type Writer } from "#core/ledger/write.ts";

/** A value compared as a whole, in a rider's documents. */
export const clicksKind = defineKind({
  kind: "clicks",
  scope: "rider",
  merge: "whole",
  schema: z.object({ count: z.int().check(z.minimum(0), z.maximum(30)), note: z.optional(z.string()) }),
  fact: ({ count }) => count,
});

/** An entity merged by fields, in the team's document; its last check spans two fields. */
export const machineKind = defineKind({
  kind: "machine",
  scope: "team",
  merge: "fields",
  schema: z
    .object({
      name: z.string().check(z.minLength(1), z.maxLength(40)),
      mass: z.object({ value: z.number().check(z.maximum(150)), unit: z.enum(["kg", "lb"]) }),
      low: z.optional(z.number()),
      high: z.optional(z.number()),
    })
    .check(z.refine(({ low, high }) => low === undefined || high === undefined || low <= high, "low is above high")),
});

/** Any JSON at all, compared as a whole, in the team's document. */
export const paperKind = defineKind({ kind: "paper", scope: "team", merge: "whole", schema: z.unknown() });

export const registry = createKindRegistry([clicksKind, machineKind, paperKind]);

/** The n-th record id: ULIDs in the order of n. */
export function recordId(n: number): string {
  return n.toString().padStart(26, "0");
}

/** A raw record with everything that an envelope needs; `fields` go over the rest. */
export function rawRecord(n: number, fields: Partial<LedgerRecord> = {}): LedgerRecord {
  return {
    version: 1,
    id: recordId(n),
    subject: "paper:one",
    ...(fields.voided === undefined ? { value: n } : {}),
    supersedes: [],
    by: "anna",
    device: "laptop",
    at: "2031-05-04T09:00:00Z",
    ...fields,
  };
}

/** Short form: a record of `subject` with `value` that supersedes the records of those numbers. */
export function states(
  n: number,
  subject: LedgerRecord["subject"],
  value: unknown,
  ...superseded: number[]
): LedgerRecord {
  return rawRecord(n, { subject, value, supersedes: superseded.map(recordId) });
}

/** Short form: a record that voids `subject`. */
export function voids(n: number, subject: LedgerRecord["subject"], ...superseded: number[]): LedgerRecord {
  return rawRecord(n, { subject, voided: { reason: "a mistake" }, supersedes: superseded.map(recordId) });
}

/** A ledger that holds the records, in the order given. */
export function ledgerOf(raws: readonly unknown[], document = "team"): Ledger {
  const ledger = createLedger(registry);
  ledger.addMany(raws, document);
  return ledger;
}

/** The numbers of records, as they were given to {@link recordId}. */
export function numbersOf(records: readonly LedgerRecord[]): number[] {
  return records.map(({ id }) => Number(id));
}

/** A writer on a ledger of its own that keeps what it appends in memory; ids start at `firstNumber`. */
export function deskOf(ledger: Ledger, firstNumber = 1000): { writer: Writer; appended: LedgerRecord[] } {
  const appended: LedgerRecord[] = [];
  let number = firstNumber;
  const writer = createWriter({
    ledger,
    append: (record) => void appended.push(record),
    newId: () => recordId(number++),
    now: () => "2031-05-04T09:00:00Z",
    by: "anna",
    device: "laptop",
    documentFor: (kind, key) => (kind.scope === "team" ? "team" : `rider/${key.split("/")[0]}/2031`),
  });
  return { writer, appended };
}

/** Everything that a ledger says about its subjects, for comparing two ledgers. */
export function everythingOf(ledger: Ledger): unknown {
  const subjects = registry.kinds.flatMap((kind) =>
    ledger.keys(kind).map((key) => ({
      subject: `${kind.kind}:${key}`,
      current: ledger.current(kind, key),
      history: ledger.history(kind, key),
      documents: ledger.history(kind, key).map(({ id }) => ledger.documentOf(id)),
    })),
  );
  return { subjects, unreadable: ledger.unreadable(), size: ledger.size };
}
