/** Writing from the pit: what was done is said, what could not be done is said with the reason. */

import { type Accessor, createSignal } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { trade } from "#client/text/trade.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { WriteResult } from "#core/ledger/write.ts";
import type { EntriesResult } from "#core/planning/entries.ts";

export interface Acts {
  /** Why the last act was refused. */
  readonly problem: Accessor<string | undefined>;
  /** What the last act did. */
  readonly notice: Accessor<string | undefined>;
  /** Writes the entries as one batch and says `done`; true when they were written. */
  write(entries: EntriesResult, done: string): boolean;
  /** Takes the outcome of another write; true when it was written. */
  wrote(result: WriteResult, done: string): boolean;
  /** Says that something was refused before any write. */
  refuse(sentence: string): void;
}

/** The acts of one screen. */
export function createActs(device: Device): Acts {
  const [problem, setProblem] = createSignal<string>();
  const [notice, setNotice] = createSignal<string>();
  const refuse = (sentence: string): void => {
    setNotice(undefined);
    setProblem(sentence);
  };
  const wrote = (result: WriteResult, done: string): boolean => {
    if (!result.ok) {
      refuse(recordProblemText(result.problem));
      return false;
    }
    setProblem(undefined);
    setNotice(done);
    return true;
  };
  return {
    problem,
    notice,
    wrote,
    refuse,
    write: (entries, done) => {
      if (entries.ok) return wrote(device.write(entries.entries), done);
      refuse(trade.entryProblem(entries.problem));
      return false;
    },
  };
}
