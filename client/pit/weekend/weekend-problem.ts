/** What is wrong with a weekend as it is typed: one sentence, in the order of the fields on the page. */

import { weekend as words } from "#client/text/weekend.ts";
import { fieldFaultText, recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { RecordKind } from "#core/ledger/kind.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { readValue } from "#core/ledger/read-record.ts";
import { sessionKind, venueKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { isDay, isTimeOfDay } from "./calendar-day.ts";
import { NEW_VENUE, NO_VENUE, type SessionDraft, type WeekendDraft } from "./weekend-draft.ts";
import { keptSessions, knownVenues, sessionValue, venueValue, weekendValue } from "./weekend-values.ts";

/** Longest reason that a record can carry. */
const REASON_LENGTH = 500;

/** The first thing that is wrong, or undefined when the draft can be saved. */
export function weekendProblem(ledger: Ledger, draft: WeekendDraft): string | undefined {
  const kept = keptSessions(draft);
  return (
    headProblem(draft) ??
    venueProblem(ledger, draft) ??
    firstOf(draft.sessions, (session) =>
      session.removal === undefined ? sessionProblem(draft, session) : reasonProblem(session, session.removal),
    ) ??
    firstOf(kept, (session) => doubleProblem(kept, session)) ??
    (kept.length === 0 ? words.needsSession : undefined)
  );
}

/** The session's name, or its number while it has none. */
export function sessionTitle({ sessions }: WeekendDraft, { row, name }: SessionDraft): string {
  const number = sessions.findIndex((session) => session.row === row) + 1;
  return name.trim() === "" ? words.session(number) : name.trim();
}

function headProblem(draft: WeekendDraft): string | undefined {
  // Days are judged before the schema, which also takes years that cannot name a season.
  const named = { ...weekendValue(draft, "any"), startsOn: "2000-01-01" };
  return refusal(weekendKind, named, words.theWeekend) ?? (isDay(draft.startsOn) ? undefined : words.needsFirstDay);
}

function venueProblem(ledger: Ledger, draft: WeekendDraft): string | undefined {
  if (draft.venue === NO_VENUE) return words.needsVenue;
  if (draft.venue !== NEW_VENUE) return undefined;
  const value = venueValue(draft);
  const sameName = knownVenues(ledger).find(({ venue }) => venue.name.toLowerCase() === value.name.toLowerCase());
  if (sameName) return words.knownAlready(sameName.venue.name);
  const altitude = value.altitude ?? { value: 0, unit: "m" };
  const refused = refusal(venueKind, { ...value, altitude }, words.theVenue);
  return refused ?? (value.altitude ? undefined : words.needsAltitude);
}

function sessionProblem(draft: WeekendDraft, session: SessionDraft): string | undefined {
  const where = sessionTitle(draft, session);
  const refused = refusal(sessionKind, { ...sessionValue(session), startsAt: "2000-01-01T00:00" }, where);
  if (refused !== undefined) return refused;
  if (!isDay(session.day)) return words.needsDay(where);
  if (session.day < draft.startsOn) return words.beforeFirstDay(where, session.day, draft.startsOn);
  return isTimeOfDay(session.time) ? undefined : words.needsTime(where);
}

function reasonProblem({ name }: SessionDraft, removal: string): string | undefined {
  const { length } = removal.trim();
  return length >= 1 && length <= REASON_LENGTH ? undefined : words.needsReason(name);
}

function doubleProblem(kept: readonly SessionDraft[], { row, name }: SessionDraft): string | undefined {
  const plain = (text: string) => text.trim().toLowerCase();
  const twice = kept.some((other) => other.row !== row && plain(other.name) === plain(name));
  return twice ? words.sameName(name.trim()) : undefined;
}

/** What the schema finds wrong, with the fields named as on the page. */
function refusal(kind: RecordKind, value: unknown, where: string): string | undefined {
  const read = readValue(kind, kind.kind, value);
  if (read.ok) return undefined;
  if (read.problem.type !== "bad value") return recordProblemText(read.problem);
  const names: Readonly<Record<string, string>> = words.fieldNames;
  const said = read.problem.fields.map(({ path, problem }) => `${names[path] ?? path}: ${fieldFaultText(problem)}`);
  return `${where}, ${said.join("; ")}.`;
}

function firstOf<Item>(items: readonly Item[], problemOf: (item: Item) => string | undefined): string | undefined {
  for (const item of items) {
    const problem = problemOf(item);
    if (problem !== undefined) return problem;
  }
  return undefined;
}
