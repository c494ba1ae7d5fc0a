/** A weekend's form while it is open: what is typed, and saving it. */

import { type Accessor, createSignal, untrack } from "solid-js";
import { ulid } from "ulid";
import type { Device } from "#client/device/create-device.ts";
import { pit } from "#client/text/pit.ts";
import { weekend as words } from "#client/text/weekend.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { sessionKind } from "#core/weekend/record-kinds.ts";
import { rebaseDraft } from "./rebase-draft.ts";
import {
  draftOfStored,
  newWeekendDraft,
  type SessionDraft,
  storedWeekend,
  type WeekendDraft,
  withAddedSession,
  withFirstDay,
  withSession,
} from "./weekend-draft.ts";
import { weekendEntries } from "./weekend-entries.ts";

export interface SavedWeekend {
  readonly weekendId: string;
  /** What was saved, in words. */
  readonly said: string;
}

export interface WeekendFormState {
  readonly draft: Accessor<WeekendDraft>;
  readonly problem: Accessor<string | undefined>;
  set(fields: Partial<Pick<WeekendDraft, "name" | "venue" | "venueName" | "venueAltitude">>): void;
  setFirstDay(startsOn: string): void;
  setSession(row: string, fields: Partial<Omit<SessionDraft, "row" | "id">>): void;
  addSession(): void;
  /** A saved session is marked, and taken back on saving; another goes away. */
  removeSession(row: string): void;
  keepSession(row: string): void;
  /** Writes it as one batch; undefined when it was refused. `invalidField` is one whose widget did not take what is typed. */
  save(invalidField: string | undefined): SavedWeekend | undefined;
}

export type WeekendFormDevice = Pick<Device, "ledger" | "write" | "withdraw">;

/** The form of `weekendId`, or without it of a new weekend. Later arrivals never touch what is typed before it is saved. */
export function createWeekendForm(device: WeekendFormDevice, weekendId?: string, newId = ulid): WeekendFormState {
  let opened = untrack(() => storedDraft(device, weekendId));
  const [draft, setDraft] = createSignal(opened ?? untrack(() => newWeekendDraft(device.ledger())));
  const [problem, setProblem] = createSignal<string>();
  const change = (next: WeekendDraft): void => {
    setDraft(next);
    setProblem(undefined);
  };
  const refuse = (sentence: string): undefined => {
    setProblem(sentence);
    return undefined;
  };
  const takeOver = (): readonly string[] => {
    const now = storedDraft(device, weekendId);
    if (!opened || !now) return [];
    const rebased = rebaseDraft(draft(), opened, now);
    opened = now;
    setDraft(rebased.draft);
    return rebased.clashes;
  };
  const setSession: WeekendFormState["setSession"] = (row, fields) => change(withSession(draft(), row, fields));
  return {
    draft,
    problem,
    set: (fields) => change({ ...draft(), ...fields }),
    setFirstDay: (startsOn) => change(withFirstDay(draft(), startsOn)),
    setSession,
    addSession: () => change(withAddedSession(draft(), newId())),
    removeSession: (row) => {
      const session = draft().sessions.find((candidate) => candidate.row === row);
      if (session?.id !== undefined) setSession(row, { removal: words.reasonStart });
      else change({ ...draft(), sessions: draft().sessions.filter((candidate) => candidate.row !== row) });
    },
    keepSession: (row) => setSession(row, { removal: undefined }),
    save: (invalidField) => {
      if (invalidField !== undefined) return refuse(pit.course.needsFix(invalidField));
      const clashes = takeOver();
      if (clashes.length > 0) return refuse(words.changedMeanwhile(clashes.join(", ")));
      const result = weekendEntries(device.ledger(), draft(), weekendId);
      if (!result.ok) return refuse(result.sentence);
      const batch = newId();
      const wrote = device.write(result.entries, { batch });
      if (!wrote.ok) return refuse(recordProblemText(wrote.problem));
      for (const { key, reason } of result.withdrawals) {
        const withdrawn = device.withdraw(sessionKind, key, reason, { batch });
        if (!withdrawn.ok) return refuse(recordProblemText(withdrawn.problem));
      }
      const name = draft().name.trim();
      const changed = !wrote.unchanged || result.withdrawals.length > 0;
      const said = weekendId === undefined ? words.created(name) : changed ? words.saved(name) : words.unchanged;
      return { weekendId: result.weekendId, said };
    },
  };
}

function storedDraft(device: WeekendFormDevice, weekendId: string | undefined): WeekendDraft | undefined {
  const stored = weekendId === undefined ? undefined : storedWeekend(device.ledger(), weekendId);
  return stored && draftOfStored(stored);
}
