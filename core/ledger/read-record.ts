import * as z from "zod/mini";
import { realmOf } from "./documents.ts";
import { fieldProblemOf, unworded } from "./field-problem.ts";
import type { KindRegistry, RecordKind } from "./kind.ts";
import type { LedgerProblem } from "./problem.ts";
import { type LedgerRecord, parseRecord, splitSubject } from "./record.ts";

/** The outcome of reading a record in the document where it stands. */
export type Reading =
  | { readonly ok: true; readonly record: LedgerRecord }
  /** `id` is there when the envelope could be read. */
  | { readonly ok: false; readonly id?: string; readonly problem: LedgerProblem };

/** Reads a record fully: envelope, kind, place and value (rule M7). The record's value is the schema's output. */
export function readRecord(raw: unknown, document: string, registry: KindRegistry): Reading {
  const parsed = parseRecord(raw);
  if (!parsed.ok) return parsed;
  const { record } = parsed;
  const { kind: kindName, key } = splitSubject(record.subject);
  const kind = registry.find(kindName);
  if (kind === undefined) return { ok: false, id: record.id, problem: { type: "unknown kind", kind: kindName } };
  const allowed = allowedPlace(kind, key);
  if (allowed.realm !== realmOf(document)) {
    const { subject } = record;
    return {
      ok: false,
      id: record.id,
      problem: { type: "wrong document", subject, document, allowed: allowed.described },
    };
  }
  const value = record.voided === undefined ? readValue(kind, record.subject, record.value) : undefined;
  if (value?.ok === false) return { ...value, id: record.id };
  const sentence = kind.misfit?.(key, value?.value);
  if (sentence !== undefined) {
    return { ok: false, id: record.id, problem: { type: "misfit", subject: record.subject, sentence } };
  }
  return { ok: true, record: value === undefined ? record : { ...record, value: value.value } };
}

/** Judges a value by its kind's schema. */
export function readValue<Value>(
  kind: RecordKind<Value>,
  subject: string,
  value: unknown,
): { readonly ok: true; readonly value: Value } | { readonly ok: false; readonly problem: LedgerProblem } {
  const parsed = z.safeParse(kind.schema, value, { error: () => unworded });
  if (parsed.success) return { ok: true, value: parsed.data };
  const fields = parsed.error.issues.map((issue) => fieldProblemOf(issue, value));
  return { ok: false, problem: { type: "bad value", subject, fields } };
}

function allowedPlace(kind: RecordKind, key: string): { realm: string; described: string } {
  if (kind.scope === "team") return { realm: "team", described: 'the document "team"' };
  const slash = key.indexOf("/");
  // A rider kind without a rider in its key belongs nowhere: no document has the realm "".
  if (slash < 1)
    return { realm: "", described: "a rider's document, under a key that begins with the rider's id and /" };
  const rider = key.slice(0, slash);
  return { realm: `rider/${rider}`, described: `the documents "rider/${rider}/<year>"` };
}
