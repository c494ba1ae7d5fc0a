/** A rider's changelog in words, with what an undo of each line would go back to. */
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { bikeName, memberName } from "#client/widgets/names.ts";
import { provenanceInWords } from "#client/widgets/provenance-in-words.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { answeredRun } from "#core/planning/changelog-text.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { runName } from "./names.ts";

export interface ChangeLine {
  readonly id: string;
  readonly path: AdjusterPath;
  readonly adjuster: string;
  /** The bike, where the rider has several. */
  readonly bike: string | undefined;
  readonly weekend: string | undefined;
  readonly from: string;
  readonly to: string;
  readonly when: string;
  readonly who: string;
  readonly why: string;
  /** The run that it answers, if it answers one. */
  readonly run: string | undefined;
  readonly standing: string | undefined;
  /** Whether it holds, alone or against another. */
  readonly holds: "current" | "in dispute" | undefined;
  /** Absent where there is no one value to go back to, or it is on the bike already. */
  readonly undo: { readonly label: string; readonly done: string } | undefined;
}

/** All changes of a rider's bikes, newest first. */
export function changeLines(ledger: Ledger, riderId: string): readonly ChangeLine[] {
  const changes = changelog(ledger, { riderId });
  const hasSeveral = new Set(changes.map(({ bikeId }) => bikeId)).size > 1;
  return changes.map((change) => lineOf(ledger, change, hasSeveral));
}

/** Most lines are never in view: what one says is worked out when it is looked at. */
function lineOf(ledger: Ledger, change: Change, hasSeveral: boolean): ChangeLine {
  return {
    id: change.id,
    path: change.path,
    weekend: change.weekend,
    get adjuster() {
      return trade.adjuster(change.path);
    },
    get bike() {
      return hasSeveral ? bikeName(ledger, change.bikeId) : undefined;
    },
    get from() {
      return change.from.map(formatQuantity).join(pit.disputes.and) || pit.changelog.nothing;
    },
    get to() {
      return change.to ? formatQuantity(change.to) : pit.changelog.nothing;
    },
    get when() {
      return formatMoment(change.at);
    },
    get who() {
      return memberName(ledger, change.by);
    },
    get why() {
      return provenanceInWords(ledger, change.cause, change.to === undefined) ?? trade.cause(change);
    },
    get run() {
      return answeredRunName(ledger, change);
    },
    get standing() {
      return change.standing && pit.changelog.standings[change.standing];
    },
    get holds() {
      return holdsOf(ledger, change);
    },
    get undo() {
      return undoOf(ledger, change);
    },
  };
}

function answeredRunName(ledger: Ledger, change: Change): string | undefined {
  const runId = answeredRun(change);
  const first = runId === undefined ? undefined : ledger.history(runKind, `${change.riderId}/${runId}`)[0];
  return first?.value && runName(ledger, { run: first.value, at: first.at });
}

function holdsOf(ledger: Ledger, { riderId, bikeId, path, current }: Change): ChangeLine["holds"] {
  if (!current) return undefined;
  return ledger.current(settingKind, settingKey(riderId, bikeId, path)).state === "disputed" ? "in dispute" : "current";
}

function undoOf(ledger: Ledger, change: Change): ChangeLine["undo"] {
  const before = ledger.before(change.id);
  if (!before || before.missing.length > 0 || before.current.state === "disputed") return undefined;
  const current = ledger.current(settingKind, settingKey(change.riderId, change.bikeId, change.path));
  // A dispute is settled at the bike, not by taking one side back.
  if (current.state === "disputed") return undefined;
  const { changelog: words } = pit;
  const now = settledValue(current);
  const name = trade.adjuster(change.path);
  if (before.current.state === "absent") {
    return change.current && now ? { label: words.undoNone, done: words.undone(name, words.nothing) } : undefined;
  }
  const { quantity } = before.current.value as Setting;
  if (!change.current && isSame(quantity, now?.quantity)) return undefined;
  const value = formatQuantity(quantity);
  return { label: change.current ? words.undo(value) : words.back(value), done: words.undone(name, value) };
}

function isSame(a: TypedQuantity, b: TypedQuantity | undefined): boolean {
  return b !== undefined && a.value === b.value && a.unit === b.unit;
}
