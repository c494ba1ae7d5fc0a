/** What a scenario holds before its first step, as entries for a writer. */
import type { WriteEntry } from "#core/ledger/write.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { baselineKind, bikeKind, memberKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { conditionsKind, courseKind, sessionKind, venueKind, weekendKind } from "#core/weekend/record-kinds.ts";
import type { Scenario } from "#scenarios/schema/scenario.ts";
import type { ScenarioTeam } from "#scenarios/schema/team.ts";

/** The members, riders, bikes, parts and baselines of a team. */
export function teamEntries(team: ScenarioTeam): readonly WriteEntry[] {
  const entries: WriteEntry[] = [];
  for (const [key, value] of Object.entries(team.members)) entries.push({ kind: memberKind, key, value });
  for (const [key, value] of Object.entries(team.riders)) entries.push({ kind: riderKind, key, value });
  for (const [key, value] of Object.entries(team.parts)) entries.push({ kind: partKind, key, value });
  for (const [key, value] of Object.entries(team.bikes)) entries.push({ kind: bikeKind, key, value });
  for (const [riderId, baselines] of Object.entries(team.baselines)) {
    for (const type of courseTypes) {
      const value = baselines[type];
      if (value) entries.push({ kind: baselineKind, key: `${riderId}/${type}`, value });
    }
  }
  return entries;
}

/** The venue, the weekend and its sessions. */
export function weekendEntries({ venue, weekend, sessions }: Scenario): readonly WriteEntry[] {
  const { id: venueId, ...venueValue } = venue;
  const { id: weekendId, ...weekendValue } = weekend;
  return [
    { kind: venueKind, key: venueId, value: venueValue },
    { kind: weekendKind, key: weekendId, value: { ...weekendValue, venue: venueId } },
    ...Object.entries(sessions).map(([id, value]) => ({ kind: sessionKind, key: `${weekendId}/${id}`, value })),
  ];
}

/** The course and the conditions that are known from the start, where there are any. */
export function knownFromTheStart({ weekend, course, conditions }: Scenario): readonly WriteEntry[] {
  return [
    ...(course ? [{ kind: courseKind, key: weekend.id, value: course }] : []),
    ...Object.entries(conditions ?? {}).map(([id, value]) => ({
      kind: conditionsKind,
      key: `${weekend.id}/${id}`,
      value,
    })),
  ];
}
