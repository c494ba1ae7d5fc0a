/**
 * The times of a timing system as runs: a time goes to the rider's earliest run of the session that has none, or makes a
 * run with nothing but a time. No feedback and no time that somebody entered is ever replaced, and the same file once
 * more changes nothing.
 */
import type { Candidate, Candidates, Refused } from "#core/exchange/candidate.ts";
import type { TableRow } from "#core/exchange/table.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type RiderBike, riderBikes } from "#core/team/roster.ts";
import { programme, type ScheduledSession } from "#core/weekend/programme.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import type { ColumnMapping } from "./column-mapping.ts";
import { matchRider } from "./match-rider.ts";
import { placeTimes } from "./place-times.ts";
import { parseTimingTime, timingForms } from "./timing-time.ts";

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
    const place = `Line ${line}`;
    const rider = matchRider(riders, cell("plate"), cell("name"));
    if (!rider.ok) {
      refused.push({ place, sentence: rider.sentence });
      continue;
    }
    const who = `${place}, ${rider.mounted.rider.name}`;
    const session = sessionOf(sessions, mapping.session === undefined ? undefined : cell("session"), sessionId);
    if (typeof session === "string") {
      refused.push({ place: who, sentence: session });
      continue;
    }
    const seconds = parseTimingTime(cell("time"));
    if (seconds === undefined) {
      const sentence = `"${cell("time").slice(0, 40)}" is no time of a run; allowed is ${timingForms}.`;
      refused.push({ place: who, sentence });
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
  readonly times: { readonly place: string; readonly seconds: number }[];
}

function sessionOf(
  sessions: readonly ScheduledSession[],
  said: string | undefined,
  chosen: string | undefined,
): ScheduledSession | string {
  const plain = said?.trim().toLowerCase();
  const found =
    plain === undefined
      ? sessions.find(({ id }) => id === chosen)
      : sessions.find(({ id, session }) => id.toLowerCase() === plain || session.name.toLowerCase() === plain);
  const known = sessions.map(({ session }) => session.name).join(", ") || "none";
  if (found) return found;
  return plain === undefined
    ? `Choose the session that the times are of; there are ${known}.`
    : `There is no session "${said?.slice(0, 60)}" in this weekend; there are ${known}.`;
}
