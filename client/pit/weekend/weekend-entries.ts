/** A weekend's draft as entries to write and sessions to take back. */
import type { RecordKind } from "#core/ledger/kind.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import { sessionKind, venueKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { freeIdentifier, identifierOfName, weekendIdentifier } from "./identifier-of-name.ts";
import { NEW_VENUE, type WeekendDraft } from "./weekend-draft.ts";
import { weekendProblem } from "./weekend-problem.ts";
import { keptSessions, sessionValue, venueValue, weekendValue } from "./weekend-values.ts";

export interface Withdrawal {
  /** Of a session. */
  readonly key: string;
  readonly reason: string;
}

export type WeekendEntries =
  | {
      readonly ok: true;
      readonly weekendId: string;
      readonly entries: readonly WriteEntry[];
      readonly withdrawals: readonly Withdrawal[];
    }
  | { readonly ok: false; readonly sentence: string };

/**
 * All of the draft; a writer leaves out what is stored already, and settles what is in dispute.
 * @param saved the weekend's id once it has been saved; without it the weekend gets one of its own
 */
export function weekendEntries(ledger: Ledger, draft: WeekendDraft, saved?: string): WeekendEntries {
  const sentence = weekendProblem(ledger, draft);
  if (sentence !== undefined) return { ok: false, sentence };
  const weekendId = saved ?? weekendIdentifier(draft.name, draft.startsOn.slice(0, 4), isKeyOf(ledger, weekendKind));
  const entries: WriteEntry[] = [];
  let { venue } = draft;
  if (venue === NEW_VENUE) {
    venue = freeIdentifier(identifierOfName(draft.venueName, "venue"), isKeyOf(ledger, venueKind));
    entries.push(entryOf(ledger, venueKind, venue, venueValue(draft)));
  }
  entries.push(entryOf(ledger, weekendKind, weekendId, weekendValue(draft, venue)));
  const taken = new Set(draft.sessions.flatMap(({ id }) => id ?? []));
  for (const session of keptSessions(draft)) {
    // A session that was removed and comes again under its name is the same one, with its conditions and runs.
    const id = session.id ?? freeIdentifier(identifierOfName(session.name, "session"), (other) => taken.has(other));
    taken.add(id);
    entries.push(entryOf(ledger, sessionKind, `${weekendId}/${id}`, sessionValue(session)));
  }
  return { ok: true, weekendId, entries, withdrawals: withdrawalsOf(ledger, draft, weekendId) };
}

function withdrawalsOf(ledger: Ledger, draft: WeekendDraft, weekendId: string): readonly Withdrawal[] {
  return draft.sessions.flatMap(({ id, removal }) => {
    const key = `${weekendId}/${id}`;
    if (id === undefined || removal === undefined || ledger.current(sessionKind, key).state === "absent") return [];
    return [{ key, reason: removal.trim() }];
  });
}

/** Also a key whose subject was taken back: what else hangs on it must not come back with something new. */
function isKeyOf(ledger: Ledger, kind: RecordKind): (key: string) => boolean {
  const keys = new Set(ledger.keys(kind));
  return (key) => keys.has(key);
}

function entryOf(ledger: Ledger, kind: RecordKind, key: string, value: unknown): WriteEntry {
  const first = ledger.current(kind, key).state === "absent";
  return { kind, key, value, ...(first && { cause: { type: "setup" } as const }) };
}
