/**
 * What somebody else saved while the form was open, taken over into what is
 * typed: fields that were not touched here take theirs; a field that both have
 * changed keeps what is typed here, and is told.
 */
import { weekend as words } from "#client/text/weekend.ts";
import { daysBetween, isDay } from "./calendar-day.ts";
import type { SessionDraft, WeekendDraft } from "./weekend-draft.ts";

export interface Rebased {
  readonly draft: WeekendDraft;
  /** What both have changed, in words. */
  readonly clashes: readonly string[];
}

const weekendFields = ["name", "startsOn", "venue"] as const;
const sessionFields = ["name", "purpose", "day", "time"] as const;

/**
 * @param draft what is typed
 * @param opened what the form opened with
 * @param now what is stored now, as a draft
 */
export function rebaseDraft(draft: WeekendDraft, opened: WeekendDraft, now: WeekendDraft): Rebased {
  const clashes: string[] = [];
  const head = merge(draft, opened, now, weekendFields);
  if (head.clash) clashes.push(words.theWeekend);
  const sessions: SessionDraft[] = [];
  for (const session of draft.sessions) {
    const before = opened.sessions.find(({ id }) => id !== undefined && id === session.id);
    const there = now.sessions.find(({ id }) => id !== undefined && id === session.id);
    if (before && !there) {
      // Removed by somebody else: it stays away unless it was changed here.
      if (session.removal !== undefined || !differs(session, before, sessionFields)) continue;
      clashes.push(session.name);
      sessions.push(session);
    } else if (before && there) {
      const merged = merge(session, before, there, sessionFields);
      const removedWhileChanged = session.removal !== undefined && differs(there, before, sessionFields);
      if (merged.clash || removedWhileChanged) clashes.push(there.name);
      sessions.push({ ...session, ...merged.fields });
    } else sessions.push(session);
  }
  for (const there of now.sessions) {
    if ([...opened.sessions, ...draft.sessions].some(({ id }) => id === there.id)) continue;
    clashes.push(there.name);
    sessions.push(there);
  }
  const rebased = { ...draft, ...head.fields };
  return { draft: { ...rebased, sessions: sessions.map((session) => placed(session, rebased.startsOn)) }, clashes };
}

function merge<Item, Field extends keyof Item>(mine: Item, opened: Item, now: Item, fields: readonly Field[]) {
  const taken: Partial<Item> = {};
  let clash = false;
  for (const field of fields) {
    if (mine[field] === opened[field]) taken[field] = now[field];
    else if (now[field] !== opened[field] && now[field] !== mine[field]) clash = true;
  }
  return { fields: taken, clash };
}

function differs<Item, Field extends keyof Item>(one: Item, other: Item, fields: readonly Field[]): boolean {
  return fields.some((field) => one[field] !== other[field]);
}

function placed(session: SessionDraft, startsOn: string): SessionDraft {
  if (!isDay(startsOn) || !isDay(session.day)) return session;
  return { ...session, followsBy: daysBetween(startsOn, session.day) };
}
