/**
 * The times of a timing system as runs: a time goes to the rider's earliest run of the session that has none, or makes a
 * run with nothing but a time. No feedback and no time that somebody entered is ever replaced, and the same file once
 * more changes nothing.
 */
import type { Candidate, Candidates, Refused } from "#core/exchange/candidate.ts";
import type { FilePlace } from "#core/exchange/file-place.ts";
import type { RowRefusal } from "#core/exchange/row-refusal.ts";
import type { TableRow } from "#core/exchange/table.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type RiderBike, riderBikes } from "#core/team/roster.ts";
import { programme, type ScheduledSession } from "#core/weekend/programme.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import type { ColumnMapping } from "./column-mapping.ts";
import { matchRider } from "./match-rider.ts";
import { placeTimes } from "./place-times.ts";
import { parseTimingTime } from "./timing-time.ts";

/** For which weekend the times are, and for which session where the file does not say. */
export interface TimingOccasion {
  readonly weekendId: string;
  readonly sessionId: string | undefined;
}

/** What the rows bring. Rows are read in the order of the file: a rider's first time is that of his first run. */
export function timeCandidates(
  ledger: Ledger,
  rows: readonly TableRow[],
  mapping: ColumnMapping,
  { weekendId, sessionId }: TimingOccasion,
): Candidates {
  const riders = riderBikes(ledger);
  const sessions = programme(ledger, weekendId)?.sessions ?? [];
  const refused: Refused[] = [];
  const groups = new Map<string, Group>();
  for (const { line, cells } of rows) {
    const cell = (column: keyof ColumnMapping): string => {
      const at = mapping[column];
      return at === undefined ? "" : (cells[at] ?? "");
    };
    const place = { type: "line", first: line, last: line } as const;
    const rider = matchRider(riders, cell("plate"), cell("name"));
    if (!rider.ok) {
      refused.push({ place, refusal: rider.refusal });
      continue;
    }
    const who: FilePlace = { ...place, of: { type: "person", name: rider.mounted.rider.name } };
    const session = sessionOf(sessions, mapping.session === undefined ? undefined : cell("session"), sessionId);
    if ("type" in session) {
      refused.push({ place: who, refusal: session });
      continue;
    }
    const seconds = parseTimingTime(cell("time"));
    if (seconds === undefined) {
      refused.push({ place: who, refusal: { type: "no time", said: cell("time").slice(0, 40) } });
      continue;
    }
    const id = `${rider.mounted.riderId}/${session.id}`;
    const group = groups.get(id) ?? { mounted: rider.mounted, session: session.id, times: [] };
    group.times.push({ place: who, seconds });
    groups.set(id, group);
  }
  const candidates: Candidate[] = [];
  for (const { mounted, session, times } of groups.values()) {
    const placed = placeTimes(ledger, { mounted, weekendId, sessionId: session }, times);
    refused.push(...placed.refused);
    for (const { key, run, place } of placed.runs) candidates.push({ place, kind: runKind, key, value: run });
  }
  return { candidates, refused };
}

interface Group {
  readonly mounted: RiderBike;
  readonly session: string;
  readonly times: { readonly place: FilePlace; readonly seconds: number }[];
}

function sessionOf(
  sessions: readonly ScheduledSession[],
  said: string | undefined,
  chosen: string | undefined,
): ScheduledSession | RowRefusal {
  const plain = said?.trim().toLowerCase();
  const found =
    plain === undefined
      ? sessions.find(({ id }) => id === chosen)
      : sessions.find(({ id, session }) => id.toLowerCase() === plain || session.name.toLowerCase() === plain);
  if (found) return found;
  const names = sessions.map(({ session }) => session.name);
  return said === undefined
    ? { type: "no session chosen", sessions: names }
    : { type: "unknown session", said: said.slice(0, 60), sessions: names };
}
