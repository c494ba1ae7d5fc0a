/** A weekend as it is typed. */
import { weekend as words } from "#client/text/weekend.ts";
import type { RecordKind } from "#core/ledger/kind.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { knownValue } from "#core/team/roster.ts";
import type { RaceWeekend, Session } from "#core/weekend/race-weekend.ts";
import { sessionKind, venueKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { daysAfter, daysBetween, isDay } from "./calendar-day.ts";

/** In place of a venue's id: none is chosen yet, or a new one is entered. Neither can be an identifier. */
export const NO_VENUE = "";
export const NEW_VENUE = "+";

export interface SessionDraft {
  /** Names the row while the form is open. */
  readonly row: string;
  /** The session's id once it has been saved. */
  readonly id: string | undefined;
  readonly name: string;
  readonly purpose: Session["purpose"] | undefined;
  /** ISO date, and time of day such as 10:30; as typed. */
  readonly day: string;
  readonly time: string;
  /** Days after the first day, while both are known: the session moves along with it. */
  readonly followsBy: number | undefined;
  /** The reason for its removal; undefined while it stays. */
  readonly removal: string | undefined;
}

export interface WeekendDraft {
  readonly name: string;
  readonly startsOn: string;
  /** A venue's id, {@link NO_VENUE} or {@link NEW_VENUE}. */
  readonly venue: string;
  readonly venueName: string;
  /** m above sea level. */
  readonly venueAltitude: number | undefined;
  readonly sessions: readonly SessionDraft[];
}

/** What the ledger holds of a weekend. */
export interface StoredWeekend {
  readonly weekend: RaceWeekend;
  readonly sessions: ReadonlyMap<string, Session>;
}

/** Common practice, no source: two practices on the first day, qualifying on the second, the race on the third. */
const firstSessions: readonly Pick<SessionDraft, "name" | "purpose" | "time" | "followsBy">[] = [
  { name: words.firstSessions.practice(1), purpose: "practice", time: "10:00", followsBy: 0 },
  { name: words.firstSessions.practice(2), purpose: "practice", time: "15:00", followsBy: 0 },
  { name: words.firstSessions.qualifying, purpose: "qualifying", time: "11:00", followsBy: 1 },
  { name: words.firstSessions.race, purpose: "race", time: "13:00", followsBy: 2 },
];

/** A weekend that nobody has entered yet: the usual sessions, which get their days from the first day. */
export function newWeekendDraft(ledger: Ledger): WeekendDraft {
  const anyVenue = ledger.keys(venueKind).some((id) => knownValue(ledger, venueKind, id));
  return {
    name: "",
    startsOn: "",
    venue: anyVenue ? NO_VENUE : NEW_VENUE,
    venueName: "",
    venueAltitude: undefined,
    sessions: firstSessions.map((session, index) => ({
      ...session,
      row: `first-${index + 1}`,
      id: undefined,
      day: "",
      removal: undefined,
    })),
  };
}

/** What is known of a weekend now; where two people disagree without a common start, what the first of them says. */
export function storedWeekend(ledger: Ledger, weekendId: string): StoredWeekend | undefined {
  const weekend = knownOrClaimed(ledger, weekendKind, weekendId);
  if (!weekend) return undefined;
  const sessions = new Map<string, Session>();
  for (const key of ledger.keys(sessionKind, weekendId)) {
    const session = knownOrClaimed(ledger, sessionKind, key);
    if (session) sessions.set(key.slice(weekendId.length + 1), session);
  }
  return { weekend, sessions };
}

/** A saved weekend as a draft, its sessions in the order in which they start. */
export function draftOfStored({ weekend, sessions }: StoredWeekend): WeekendDraft {
  const inOrder = [...sessions].sort(([, a], [, b]) => (a.startsAt < b.startsAt ? -1 : 1));
  return {
    name: weekend.name,
    startsOn: weekend.startsOn,
    venue: weekend.venue,
    venueName: "",
    venueAltitude: undefined,
    sessions: inOrder.map(([id, session]) => draftOfSession(id, session, weekend.startsOn)),
  };
}

/** The row of a saved session. */
export function draftOfSession(id: string, { name, purpose, startsAt }: Session, startsOn: string): SessionDraft {
  const [day = "", time = ""] = startsAt.split("T");
  return { row: id, id, name, purpose, day, time, followsBy: distance(startsOn, day), removal: undefined };
}

/** One more session, on the day of the last one. `row` must be new. */
export function withAddedSession(draft: WeekendDraft, row: string): WeekendDraft {
  const day = draft.sessions.findLast(({ removal }) => removal === undefined)?.day ?? draft.startsOn;
  const added = { row, id: undefined, name: "", purpose: undefined, time: "", removal: undefined };
  return { ...draft, sessions: [...draft.sessions, { ...added, day, followsBy: distance(draft.startsOn, day) }] };
}

/** Another first day: sessions that have their place after it move along. */
export function withFirstDay(draft: WeekendDraft, startsOn: string): WeekendDraft {
  if (!isDay(startsOn)) return { ...draft, startsOn };
  const sessions = draft.sessions.map((session) => {
    const { followsBy } = session;
    if (followsBy === undefined) return { ...session, followsBy: distance(startsOn, session.day) };
    return { ...session, day: daysAfter(startsOn, followsBy) };
  });
  return { ...draft, startsOn, sessions };
}

/** Other fields of one session; a day that is typed gives it its place after the first day. */
export function withSession(draft: WeekendDraft, row: string, fields: Partial<SessionDraft>): WeekendDraft {
  const { day } = fields;
  const place = day === undefined ? {} : { followsBy: distance(draft.startsOn, day) };
  const sessions = draft.sessions.map((session) =>
    session.row === row ? { ...session, ...fields, ...place } : session,
  );
  return { ...draft, sessions };
}

function distance(startsOn: string, day: string): number | undefined {
  return isDay(startsOn) && isDay(day) ? daysBetween(startsOn, day) : undefined;
}

function knownOrClaimed<Value>(ledger: Ledger, kind: RecordKind<Value>, key: string): Value | undefined {
  const known = knownValue(ledger, kind, key);
  if (known !== undefined) return known;
  const current = ledger.current(kind, key);
  return current.state === "disputed" ? current.claims.find(({ value }) => value !== undefined)?.value : undefined;
}
