import { realmOf } from "./documents.ts";
import type { KindRegistry } from "./kind.ts";
import { examineJson } from "./plain-json.ts";
import type { LedgerProblem } from "./problem.ts";
import { type Reading, readRecord } from "./read-record.ts";
import type { LedgerRecord } from "./record.ts";

/** A record that is kept and set aside, with the reason. */
export type Unreadable = { readonly raw: unknown; readonly document: string; readonly problem: LedgerProblem };

/** What keeping one raw record did. */
export type Kept = {
  readonly reading: Reading;
  /** False when the same content was already there. */
  readonly changed: boolean;
  /** The record that became readable by this. */
  readonly entered?: LedgerRecord;
  /** The record that was readable before and is no longer. */
  readonly left?: LedgerRecord;
};

/** Keeps every record that ever arrived, and finds those whose id came with different contents (rule M8). */
export type RecordStore = {
  keep(raw: unknown, document: string): Kept;
  /** The readable record of that id and the first of its documents by name. */
  find(id: string): { readonly record: LedgerRecord; readonly document: string } | undefined;
  /** All that was set aside, in an order that does not depend on arrival. */
  unreadable(): readonly Unreadable[];
  /** Number of different contents kept, readable or not. */
  readonly size: number;
};

/** A store without records. */
export function createRecordStore(registry: KindRegistry): RecordStore {
  const holdingsById = new Map<string, Holding[]>();
  /** Those with something to set aside, and their ids: what is set aside stays so, since nothing is ever removed. */
  const spoiled = new Map<Holding, string>();
  const nameless = new Map<string, Unreadable>();
  let size = 0;

  const keepNameless = (raw: unknown, document: string, reading: Reading & { ok: false }): Kept => {
    const identity = `${document}\n${examineJson(raw).text}`;
    if (nameless.has(identity)) return { reading, changed: false };
    nameless.set(identity, { raw, document, problem: reading.problem });
    size++;
    return { reading, changed: true };
  };

  const keep = (raw: unknown, document: string): Kept => {
    const reading = readRecord(raw, document, registry);
    const id = reading.ok ? reading.record.id : reading.id;
    if (id === undefined) return keepNameless(raw, document, reading as Reading & { ok: false });
    const realm = realmOf(document);
    const holdings = holdingsById.get(id);
    const holding = holdings?.find((candidate) => candidate.realm === realm);
    const version: Version = { raw, reading, documents: [document] };
    if (holding === undefined) {
      const next: Holding = { realm, versions: [version] };
      if (!reading.ok) spoiled.set(next, id);
      if (holdings === undefined) holdingsById.set(id, [next]);
      else holdings.push(next);
      size++;
      return reading.ok ? { reading, changed: true, entered: reading.record } : { reading, changed: true };
    }
    const { text } = examineJson(raw);
    holding.byText ??= new Map(holding.versions.map((known) => [examineJson(known.raw).text, known]));
    const conflict: Reading = { ok: false, id, problem: { type: "conflicting", record: id } };
    const known = holding.byText.get(text);
    if (known !== undefined) {
      const changed = !known.documents.includes(document);
      if (changed) known.documents = [...known.documents, document].sort();
      return { reading: holding.versions.length > 1 ? conflict : known.reading, changed };
    }
    const [first] = holding.versions;
    const left = holding.versions.length === 1 && first?.reading.ok ? first.reading.record : undefined;
    holding.versions.push(version);
    spoiled.set(holding, id);
    holding.byText.set(text, version);
    size++;
    return left === undefined ? { reading: conflict, changed: true } : { reading: conflict, changed: true, left };
  };

  return {
    keep,
    find: (id) => {
      const readable = (holdingsById.get(id) ?? []).flatMap(readableIn);
      return readable.sort(teamFirst)[0];
    },
    unreadable: () => {
      const named = [...spoiled].flatMap(([holding, id]) => setAside(id, holding, registry));
      const keyed = [...named, ...nameless.values()].map((entry) => ({
        entry,
        order: `${entry.document}\n${examineJson(entry.raw).text}`,
      }));
      keyed.sort((one, other) => (one.order < other.order ? -1 : one.order > other.order ? 1 : 0));
      return keyed.map(({ entry }) => entry);
    },
    get size() {
      return size;
    },
  };
}

type Version = { readonly raw: unknown; readonly reading: Reading; documents: readonly string[] };

/** The contents that came under one id in one realm. Texts are worked out only when a second one comes. */
type Holding = { readonly realm: string; readonly versions: Version[]; byText?: Map<string, Version> };

type Found = { readonly record: LedgerRecord; readonly document: string };

function readableIn(holding: Holding): Found[] {
  const [version, ...others] = holding.versions;
  const document = version?.documents[0];
  if (version === undefined || document === undefined || others.length > 0 || !version.reading.ok) return [];
  return [{ record: version.reading.record, document }];
}

// The same content may stand in several documents of a realm, and the problem may name the one it stands in: each is
// read for itself, so that what is said does not depend on which arrived first.
function setAside(id: string, { versions }: Holding, registry: KindRegistry): Unreadable[] {
  return versions.flatMap(({ raw, documents }) =>
    documents.flatMap((document): Unreadable[] => {
      if (versions.length > 1) return [{ raw, document, problem: { type: "conflicting", record: id } }];
      const reading = readRecord(raw, document, registry);
      return reading.ok ? [] : [{ raw, document, problem: reading.problem }];
    }),
  );
}

// A rider who copies an id of the team's into his own document must not hide the team's record.
function teamFirst(one: Found, other: Found): number {
  if ((one.document === "team") !== (other.document === "team")) return one.document === "team" ? -1 : 1;
  return one.document < other.document ? -1 : 1;
}
