/**
 * The changelog of a rider's bikes: one line for each record of a setting, with
 * the value before it, who wrote it, when, and why.
 */
import type { Cause } from "#core/ledger/cause.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { onceForEachOwner, onceForEachState } from "#core/ledger/once-for-each-state.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { parseSettingKey } from "./on-the-bike.ts";
import { settingKind } from "./record-kinds.ts";
import type { Setting } from "./setting.ts";

export interface Change {
  readonly id: string;
  readonly riderId: string;
  readonly bikeId: string;
  readonly path: AdjusterPath;
  /** What was current before, as the writer saw it: none for a first setting, several when a dispute was resolved. */
  readonly from: readonly TypedQuantity[];
  /** What was set; absent when the record voids its subject. */
  readonly to: TypedQuantity | undefined;
  readonly standing: Setting["standing"] | undefined;
  readonly weekend: string | undefined;
  readonly session: string | undefined;
  readonly by: string;
  readonly device: string;
  /** The writer's clock; informative only. */
  readonly at: string;
  readonly cause: Cause | undefined;
  readonly batch: string | undefined;
  readonly voided: string | undefined;
  /** True while nothing has superseded it. */
  readonly current: boolean;
}

/** Which changes to list; without a field, all. */
export interface ChangelogFilter {
  readonly riderId?: string;
  readonly weekend?: string;
  readonly path?: AdjusterPath;
}

/** The changes, newest first by the writers' clocks (ties by id). */
export function changelog(ledger: Ledger, filter: ChangelogFilter = {}): readonly Change[] {
  const { riderId, weekend, path } = filter;
  const all = riderId === undefined ? changesOfAll(ledger) : changesOfRider(ledger, riderId);
  if (weekend === undefined && path === undefined) return all;
  return all.filter(
    (change) => (weekend === undefined || change.weekend === weekend) && (path === undefined || change.path === path),
  );
}

const changesOfRider = onceForEachOwner([settingKind], (ledger, riderId): readonly Change[] =>
  ledger
    .keys(settingKind, riderId)
    .flatMap((key) => {
      const address = parseSettingKey(key);
      return address ? changesOf(ledger, key, address) : [];
    })
    .sort(newestFirst),
);

const changesOfAll = onceForEachState([settingKind], (ledger): readonly Change[] =>
  ledger
    .owners(settingKind)
    .flatMap((riderId) => changesOfRider(ledger, riderId))
    .sort(newestFirst),
);

function newestFirst(a: Change, b: Change): number {
  return compareText(b.at, a.at) || compareText(b.id, a.id);
}

/**
 * A subject's changes, worked out once for each state of its history: a rider has thousands of them, and a write makes one.
 * A ledger gives the same history until a record of the subject arrives.
 */
const changesByHistory = new WeakMap<readonly LedgerRecord<Setting>[], readonly Change[]>();

type Address = NonNullable<ReturnType<typeof parseSettingKey>>;

function changesOf(ledger: Ledger, key: string, address: Address): readonly Change[] {
  const history = ledger.history(settingKind, key);
  const known = changesByHistory.get(history);
  if (known) return known;
  const current = ledger.current(settingKind, key);
  const heads = new Set(current.state === "absent" ? [] : current.heads.map((head) => head.id));
  const byId = new Map(history.map((record) => [record.id, record]));
  const changes = history.map((record) => ({
    id: record.id,
    ...address,
    from: different(record.supersedes.flatMap((id) => byId.get(id)?.value?.quantity ?? [])),
    to: record.value?.quantity,
    standing: record.value?.standing,
    weekend: weekendOf(record, byId),
    session: record.value?.session,
    by: record.by,
    device: record.device,
    at: record.at,
    cause: record.cause,
    batch: record.batch,
    voided: record.voided?.reason,
    current: heads.has(record.id),
  }));
  changesByHistory.set(history, changes);
  return changes;
}

/** Two people who said the same said one thing. */
function different(quantities: readonly TypedQuantity[]): readonly TypedQuantity[] {
  return quantities.filter(
    ({ value, unit }, index) => quantities.findIndex((other) => other.value === value && other.unit === unit) === index,
  );
}

/** A voiding record carries no weekend of its own: it belongs to that of the record it takes back. */
function weekendOf(
  record: LedgerRecord<Setting>,
  byId: ReadonlyMap<string, LedgerRecord<Setting>>,
): string | undefined {
  return record.value?.weekend ?? record.supersedes.map((id) => byId.get(id)?.value?.weekend).find(Boolean);
}

function compareText(a: string, b: string): number {
  return a < b ? -1 : a > b ? 1 : 0;
}
