import type { Cause } from "./cause.ts";
import { settledValue } from "./current.ts";
import type { RecordKind } from "./kind.ts";
import type { Ledger } from "./ledger.ts";
import { isJsonObject, sameJson } from "./plain-json.ts";
import type { LedgerProblem } from "./problem.ts";
import { readRecord, readValue } from "./read-record.ts";
import { isRecordKey, type LedgerRecord, type Subject, splitSubject, subjectOf } from "./record.ts";

export { describeLedgerProblem, type LedgerProblem } from "./problem.ts";

/** The outcome of writing; with `unchanged` nothing had to be written. */
export type WriteResult =
  | { readonly ok: true; readonly records: readonly LedgerRecord[]; readonly unchanged?: boolean }
  | { readonly ok: false; readonly problem: LedgerProblem };

/** What may go with a write. `force` writes even a value that is current already, to confirm it. */
export type WriteOptions = { readonly cause?: Cause; readonly batch?: string; readonly force?: boolean };

/** One of several values written together; its own cause goes before the common one. */
export type WriteEntry<Value = unknown> = {
  readonly kind: RecordKind<Value>;
  readonly key: string;
  readonly value: Value;
  readonly cause?: Cause;
};

/** One subject withdrawn, among several entries written together; `voided` is the reason (1 to 500 characters). */
export type WithdrawEntry = {
  readonly kind: RecordKind;
  readonly key: string;
  readonly voided: string;
  readonly cause?: Cause;
};

/** Writes records for one member on one device. Every write is checked fully before anything is kept. */
export type Writer = {
  /** Makes a value current, superseding the current records in view. */
  set<Value>(kind: RecordKind<Value>, key: string, value: Value, options?: WriteOptions): WriteResult;
  /** Writes several subjects as one batch, or nothing when one of them is refused. What is absent needs no withdrawal. */
  setMany(entries: readonly (WriteEntry | WithdrawEntry)[], options?: WriteOptions): WriteResult;
  /** Withdraws a subject, with the reason (1 to 500 characters). */
  voidSubject(kind: RecordKind, key: string, reason: string, options?: WriteOptions): WriteResult;
  /** Goes back to exactly what was current directly before a record; withdraws the subject when that was nothing. */
  revert(recordId: string, options?: Omit<WriteOptions, "cause">): WriteResult;
  /** Settles a dispute by what somebody found to be so; supersedes every current record. */
  resolve<Value>(
    kind: RecordKind<Value>,
    key: string,
    value: Value,
    options?: Omit<WriteOptions, "cause">,
  ): WriteResult;
};

/** What a writer needs from around it. */
export type WriterContext = {
  readonly ledger: Ledger;
  /** Keeps one record in its document; the writer adds it to the ledger once this has returned. */
  append(record: LedgerRecord, document: string): void;
  /** Keeps the records of one batch in one go, where the document can; `append` one by one when absent. */
  appendMany?(records: readonly LedgerRecord[], document: string): void;
  /** A new ULID. */
  newId(): string;
  /** The time now, ISO 8601 in UTC. */
  now(): string;
  readonly by: string;
  readonly device: string;
  documentFor(kind: RecordKind, key: string): string;
};

/** A writer for one member on one device. */
export function createWriter(context: WriterContext): Writer {
  const { ledger } = context;

  const write = (drafts: readonly Draft[], options: WriteOptions): WriteResult => {
    const placed: Placed[] = [];
    for (const draft of drafts) {
      const drafted = place(context, draft, options);
      if (!drafted.ok) return drafted;
      placed.push(drafted);
    }
    for (const document of new Set(placed.map((entry) => entry.document))) {
      const records = placed.filter((entry) => entry.document === document).map(({ record }) => record);
      if (context.appendMany !== undefined) context.appendMany(records, document);
      else for (const record of records) context.append(record, document);
      ledger.addMany(records, document);
    }
    const records = placed.map(({ record }) => record);
    return records.length > 0 ? { ok: true, records } : { ok: true, records, unchanged: true };
  };

  const setMany = (entries: readonly (WriteEntry | WithdrawEntry)[], options: WriteOptions = {}): WriteResult => {
    const drafts: Draft[] = [];
    const subjects = new Set<string>();
    for (const entry of entries) {
      const draft = "voided" in entry ? draftVoid(ledger, entry) : draftValue(ledger, entry);
      if (!draft.ok) return draft;
      const { subject } = draft.draft;
      if (subjects.has(subject)) return { ok: false, problem: { type: "subject twice", subject } };
      subjects.add(subject);
      if (!draft.current || (options.force === true && !("voided" in entry))) drafts.push(draft.draft);
    }
    return write(drafts, options);
  };

  const voidSubject: Writer["voidSubject"] = (kind, key, reason, options = {}) => {
    if (!isRecordKey(key)) return { ok: false, problem: { type: "bad key", kind: kind.kind, key } };
    const subject = subjectOf(kind.kind, key);
    if (ledger.current(kind, key).state === "absent")
      return { ok: false, problem: { type: "nothing to void", subject } };
    return write([{ kind, key, subject, content: { voided: { reason } } }], options);
  };

  const writer: Writer = {
    set: (kind, key, value, options = {}) => setMany([{ kind: kind as RecordKind, key, value }], options),
    setMany: (entries, options = {}) => setMany(entries, { ...options, batch: options.batch ?? context.newId() }),
    voidSubject,
    revert: (recordId, options = {}) => {
      const record = ledger.record(recordId);
      const before = ledger.before(recordId);
      if (record === undefined || before === undefined) {
        return { ok: false, problem: { type: "unknown record", record: recordId } };
      }
      const { subject } = record;
      const { kind: name, key } = splitSubject(subject);
      const kind = ledger.registry.find(name);
      if (kind === undefined) throw new Error(`The readable record ${recordId} is of no known kind.`);
      const { current, missing } = before;
      if (missing.length > 0) {
        return { ok: false, problem: { type: "previous value not here", record: recordId, missing } };
      }
      const reverting = { ...options, cause: { type: "revert", record: recordId } } as const;
      switch (current.state) {
        case "disputed":
          return { ok: false, problem: { type: "no single previous value", record: recordId, subject } };
        case "settled":
          return setMany([{ kind, key, value: current.value }], reverting);
        case "absent": {
          if (ledger.current(kind, key).state === "absent") return { ok: true, records: [], unchanged: true };
          const reason = current.voided?.voided?.reason ?? "Undone: there was no value before.";
          return voidSubject(kind, key, reason, reverting);
        }
      }
    },
    resolve: (kind, key, value, options = {}) => {
      if (!isRecordKey(key)) return { ok: false, problem: { type: "bad key", kind: kind.kind, key } };
      const records = ledger.heads(kind, key).map(({ id }) => id);
      return setMany([{ kind: kind as RecordKind, key, value }], {
        ...options,
        cause: { type: "resolution", records },
      });
    },
  };
  return writer;
}

/** A record before it has an id. */
type Draft = {
  readonly kind: RecordKind;
  readonly key: string;
  readonly subject: Subject;
  readonly content: Pick<LedgerRecord, "value"> | Pick<LedgerRecord, "voided">;
  readonly cause?: Cause;
};

/** Withdraws a subject; `current` tells that there is nothing to withdraw. */
function draftVoid(
  ledger: Ledger,
  { kind, key, voided, cause }: WithdrawEntry,
): { readonly ok: true; readonly draft: Draft; readonly current: boolean } | Refused {
  if (!isRecordKey(key)) return { ok: false, problem: { type: "bad key", kind: kind.kind, key } };
  const content = { voided: { reason: voided } };
  const draft = { kind, key, subject: subjectOf(kind.kind, key), content, ...(cause && { cause }) };
  return { ok: true, draft, current: ledger.current(kind, key).state === "absent" };
}

type Placed = { readonly ok: true; readonly record: LedgerRecord; readonly document: string };
type Refused = { readonly ok: false; readonly problem: LedgerProblem };

/** Checks one value; `current` tells that it is settled already, so that nothing needs writing. */
function draftValue(
  ledger: Ledger,
  { kind, key, value, cause }: WriteEntry,
): { readonly ok: true; readonly draft: Draft; readonly current: boolean } | Refused {
  if (!isRecordKey(key)) return { ok: false, problem: { type: "bad key", kind: kind.kind, key } };
  const subject = subjectOf(kind.kind, key);
  const read = readValue(kind, subject, asSent(value));
  if (!read.ok) return read;
  const content = { value: asSent(read.value) };
  const draft = { kind, key, subject, content, ...(cause === undefined ? {} : { cause }) };
  const now = ledger.current(kind, key);
  return { ok: true, draft, current: now.state === "settled" && sameJson(settledValue(now), content.value) };
}

/** Makes the record and reads it as any device will, so that nothing is written that would be set aside. */
function place(context: WriterContext, draft: Draft, options: WriteOptions): Placed | Refused {
  const cause = draft.cause ?? options.cause;
  const raw: LedgerRecord = {
    version: 1,
    id: context.newId(),
    subject: draft.subject,
    ...draft.content,
    supersedes: context.ledger.heads(draft.kind, draft.key).map(({ id }) => id),
    by: context.by,
    device: context.device,
    at: context.now(),
    ...(options.batch === undefined ? {} : { batch: options.batch }),
    ...(cause === undefined ? {} : { cause: asSent(cause) as Cause }),
  };
  const document = context.documentFor(draft.kind, draft.key);
  const reading = readRecord(raw, document, context.ledger.registry);
  return reading.ok ? { ok: true, record: raw, document } : { ok: false, problem: reading.problem };
}

/**
 * As it will arrive at another device. A field set to undefined is a field left out: JSON has no undefined. Half a
 * surrogate pair, as a field leaves it that cuts a text inside an emoji, becomes U+FFFD in UTF-8: written as it is, the
 * content here would differ from everybody else's for ever.
 */
function asSent(value: unknown): unknown {
  if (typeof value === "string") return value.replace(halfPair, "\ufffd");
  if (Array.isArray(value)) return value.map(asSent);
  if (!isJsonObject(value) || Object.getPrototypeOf(value) !== Object.prototype) return value;
  const entries = Object.entries(value).filter(([, inner]) => inner !== undefined);
  return Object.fromEntries(entries.map(([name, inner]) => [name, asSent(inner)]));
}

const halfPair = /[\ud800-\udbff](?![\udc00-\udfff])|(?<![\ud800-\udbff])[\udc00-\udfff]/g;
