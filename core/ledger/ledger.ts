import { type Current, judgeHeads } from "./current.ts";
import { createKeyIndex } from "./key-index.ts";
import type { KindRegistry, RecordKind } from "./kind.ts";
import type { LedgerProblem } from "./problem.ts";
import { type LedgerRecord, splitSubject, subjectOf } from "./record.ts";
import { createRecordStore, type Unreadable } from "./record-store.ts";
import { effectiveTargets, type Supersession, traceSupersession } from "./supersession.ts";

export { type Current, settledValue } from "./current.ts";
export type { Unreadable } from "./record-store.ts";

/** The outcome of adding one record; `changed` is false when the ledger had it already. */
export type AddResult =
  | { readonly ok: true; readonly changed: boolean; readonly record: LedgerRecord }
  | { readonly ok: false; readonly changed: boolean; readonly problem: LedgerProblem };

/** What a ledger says to a listener: the subjects that may read differently now. */
export type LedgerListener = (subjects: ReadonlySet<string>) => void;

/** The records of any number of documents and what follows from them; the rules are in MERGE.md. */
export type Ledger = {
  /** Takes a record from a document (`team` or `rider/<id>/<year>`); what cannot be read is kept and set aside. */
  add(raw: unknown, document: string): AddResult;
  /** Takes many and tells listeners once. */
  addMany(raws: readonly unknown[], document: string): readonly AddResult[];
  current<Value>(kind: RecordKind<Value>, key: string): Current<Value>;
  /** The current records of a subject, sorted by id: what a writer that has them in view supersedes. */
  heads<Value>(kind: RecordKind<Value>, key: string): readonly LedgerRecord<Value>[];
  /** Keys with at least one readable record, sorted; of one owner only those that begin `<owner>/`, or are it. */
  keys(kind: RecordKind, owner?: string): readonly string[];
  /** What stands before the slash in the keys of a kind, such as the riders who have runs; sorted. */
  owners(kind: RecordKind): readonly string[];
  /** Grows with each add that changed a readable record of that kind, or of one owner of it. */
  stamp(kind: RecordKind, owner?: string): number;
  /** All readable records of a subject, causes before effects, otherwise by id. */
  history<Value>(kind: RecordKind<Value>, key: string): readonly LedgerRecord<Value>[];
  /** The readable record of that id. */
  record(id: string): LedgerRecord | undefined;
  /** The document in which that readable record stands; the first by name when it stands in several. */
  documentOf(id: string): string | undefined;
  /** What was current directly before a record, and which records that it superseded cannot be read here. */
  before(id: string): { readonly current: Current; readonly missing: readonly string[] } | undefined;
  /** Everything that was set aside, in an order that does not depend on arrival. */
  unreadable(): readonly Unreadable[];
  /** Calls back after each add that changed something; returns what ends it. */
  onChange(listener: LedgerListener): () => void;
  readonly registry: KindRegistry;
  /** Number of different records kept, readable or not. */
  readonly size: number;
  /** Grows with each add that changed something. */
  readonly revision: number;
};

/** An empty ledger that understands the given kinds. Adding costs time for the record and its subject only. */
export function createLedger(registry: KindRegistry): Ledger {
  const store = createRecordStore(registry);
  const subjects = new Map<string, SubjectState>();
  const index = createKeyIndex();
  const listeners = new Set<LedgerListener>();
  let revision = 0;
  let setAside: { readonly revision: number; readonly entries: readonly Unreadable[] } | undefined;

  const enter = (record: LedgerRecord): void => {
    const { kind, key } = splitSubject(record.subject);
    const state = subjects.get(record.subject) ?? { records: new Map<string, LedgerRecord>() };
    if (state.records.size === 0) index.add(kind, key);
    index.touch(kind, key);
    state.records.set(record.id, record);
    subjects.set(record.subject, { records: state.records });
  };

  const leave = (record: LedgerRecord): void => {
    const { kind, key } = splitSubject(record.subject);
    const records = subjects.get(record.subject)?.records ?? new Map<string, LedgerRecord>();
    records.delete(record.id);
    index.touch(kind, key);
    if (records.size > 0) {
      subjects.set(record.subject, { records });
      return;
    }
    subjects.delete(record.subject);
    index.remove(kind, key);
  };

  const addMany = (raws: readonly unknown[], document: string): readonly AddResult[] => {
    const touched = new Set<string>();
    const before = revision;
    const results = raws.map((raw): AddResult => {
      const { reading, changed, entered, left } = store.keep(raw, document);
      if (changed) revision++;
      if (entered !== undefined) enter(entered);
      if (left !== undefined) leave(left);
      for (const record of [entered, left]) if (record !== undefined) touched.add(record.subject);
      return reading.ok
        ? { ok: true, changed, record: reading.record }
        : { ok: false, changed, problem: reading.problem };
    });
    if (revision !== before) for (const listener of [...listeners]) listener(touched);
    return results;
  };

  const stateOf = (kind: RecordKind, key: string): SubjectState | undefined => {
    if (registry.find(kind.kind) !== kind) throw new Error(`The kind "${kind.kind}" is not one of this ledger's.`);
    return subjects.get(subjectOf(kind.kind, key));
  };

  const traceOf = (state: SubjectState): Supersession => {
    state.trace ??= traceSupersession(state.records);
    return state.trace;
  };

  const ledger: Ledger = {
    add: (raw, document) => {
      const [result] = addMany([raw], document);
      if (result === undefined) throw new Error("Adding one record gave no result.");
      return result;
    },
    addMany,
    current: <Value>(kind: RecordKind<Value>, key: string) => {
      const state = stateOf(kind, key);
      if (state === undefined) return { state: "absent" };
      state.current ??= judgeHeads(kind as RecordKind, traceOf(state).heads, state.records);
      return state.current as Current<Value>;
    },
    heads: <Value>(kind: RecordKind<Value>, key: string) => {
      const state = stateOf(kind, key);
      return (state === undefined ? [] : traceOf(state).heads) as readonly LedgerRecord<Value>[];
    },
    keys: ({ kind }, owner) => index.keys(kind, owner),
    owners: ({ kind }) => index.owners(kind),
    stamp: ({ kind }, owner) => index.stamp(kind, owner),
    history: <Value>(kind: RecordKind<Value>, key: string) => {
      const state = stateOf(kind, key);
      return (state === undefined ? [] : traceOf(state).history) as readonly LedgerRecord<Value>[];
    },
    record: (id) => store.find(id)?.record,
    documentOf: (id) => store.find(id)?.document,
    before: (id) => {
      const record = ledger.record(id);
      const state = record === undefined ? undefined : subjects.get(record.subject);
      const kind = record === undefined ? undefined : registry.find(splitSubject(record.subject).kind);
      if (record === undefined || state === undefined || kind === undefined) return undefined;
      const targets = effectiveTargets(record, state.records);
      const named = new Map([...state.records].filter(([target]) => targets.includes(target)));
      const missing = record.supersedes.filter((target) => ledger.record(target) === undefined);
      return { current: judgeHeads(kind, traceSupersession(named).heads, state.records), missing };
    },
    unreadable: () => {
      if (setAside?.revision !== revision) setAside = { revision, entries: store.unreadable() };
      return setAside.entries;
    },
    onChange: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    registry,
    get size() {
      return store.size;
    },
    get revision() {
      return revision;
    },
  };
  return ledger;
}

/** The readable records of one subject; what follows from them is worked out when asked for and kept until it changes. */
type SubjectState = { readonly records: Map<string, LedgerRecord>; trace?: Supersession; current?: Current };
