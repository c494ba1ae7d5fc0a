/** A value set by hand while its dialog is open. */

import { type Accessor, createMemo, createSignal, untrack } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { type EntryField, entryField, numberIn } from "#client/widgets/entry-field.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { WithdrawEntry, WriteEntry } from "#core/ledger/write.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { mountedAdjuster, mountedAdjusters } from "#core/team/roster.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { type ByHandDraft, byHandEntries } from "./by-hand.ts";
import type { RiderBench } from "./create-rider-bench.ts";

export interface ByHandState {
  readonly draft: Accessor<ByHandDraft>;
  readonly problem: Accessor<string | undefined>;
  readonly paths: Accessor<readonly AdjusterPath[]>;
  /** How the value of the chosen adjuster is typed. */
  readonly field: Accessor<EntryField | undefined>;
  /** What the bike reads at the bench now, where that is settled. */
  readonly now: Accessor<TypedQuantity | undefined>;
  /** Another adjuster: its value starts as what is on the bike. */
  choose(path: AdjusterPath): void;
  setValue(value: number | undefined): void;
  setNote(note: string): void;
  /** True when it was written. */
  save(): boolean;
}

/** Setting `path` by hand on this bench, in answer to `run` where there is one. */
export function createByHand(bench: RiderBench, path: AdjusterPath, run?: LoggedRun): ByHandState {
  const found = (at: AdjusterPath) => mountedAdjuster(bench.mounted()?.parts ?? {}, at);
  const fieldAt = (at: AdjusterPath): EntryField | undefined => {
    const adjuster = found(at)?.adjuster;
    return adjuster && entryField(adjuster);
  };
  const nowAt = (at: AdjusterPath): TypedQuantity | undefined => bench.occasion()?.onTheBike[at];
  const startOf = (at: AdjusterPath): Pick<ByHandDraft, "value" | "from"> => {
    const field = fieldAt(at);
    const from = nowAt(at) ?? bench.sheet()?.rows.find((row) => row.path === at)?.bench;
    return { value: field && numberIn(field, from), from };
  };
  const [draft, setDraft] = createSignal<ByHandDraft>(untrack(() => ({ path, ...startOf(path), note: "" })));
  const [problem, setProblem] = createSignal<string>();
  const change = (fields: Partial<ByHandDraft>): void => {
    setDraft((now) => ({ ...now, ...fields }));
    setProblem(undefined);
  };
  const chosen = createMemo(() => draft().path);
  return {
    draft,
    problem,
    paths: () => mountedAdjusters(bench.mounted()?.parts ?? {}).map((mounted) => mounted.path),
    // The same adjuster is the same, however often the records it comes from are read.
    field: createMemo(() => fieldAt(chosen()), undefined, {
      equals: (a, b) => JSON.stringify(a) === JSON.stringify(b),
    }),
    now: () => nowAt(chosen()),
    choose: (next) => change({ path: next, ...startOf(next) }),
    setValue: (value) => change({ value }),
    setNote: (note) => change({ note }),
    save: () => {
      const occasion = bench.occasion();
      if (!occasion) return false;
      const entries = byHandEntries(occasion, draft(), run);
      if (!entries.ok) {
        setProblem(trade.entryProblem(entries.problem));
        return false;
      }
      const wrote = bench.device.write(entries.entries);
      if (!wrote.ok) setProblem(recordProblemText(wrote.problem));
      else bench.acts.wrote(wrote, pit.byHand.saved(trade.adjuster(draft().path), savedText(entries.entries)));
      return wrote.ok;
    },
  };

  /** What has been written, which the bench shows a frame later. */
  function savedText(entries: readonly (WriteEntry | WithdrawEntry)[]): string {
    const entry = entries.find(({ kind }) => kind.kind === settingKind.kind);
    return entry && "value" in entry ? formatQuantity((entry.value as Setting).quantity) : "";
  }
}
