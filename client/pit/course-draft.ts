/**
 * Course and conditions as they are typed, and as entries to write. Only what
 * was changed on this screen is written, so that what somebody else enters
 * meanwhile stays.
 */

import { courseProfile } from "#client/text/course-profile.ts";
import { pit } from "#client/text/pit.ts";
import { sections as sectionWords } from "#client/text/sections.ts";
import { type EntryField, entryField, numberIn, quantityIn } from "#client/widgets/entry-field.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { readValue } from "#core/ledger/read-record.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import type { Ground } from "#core/team/ground.ts";
import { knownValue } from "#core/team/roster.ts";
import type { Conditions } from "#core/weekend/conditions.ts";
import type { Course } from "#core/weekend/course.ts";
import type { CourseProfile } from "#core/weekend/course-shape.ts";
import { type Programme, programme } from "#core/weekend/programme.ts";
import { conditionsKind, courseKind } from "#core/weekend/record-kinds.ts";
import { type SectionDraft, sectionDrafts, sectionsOf } from "./course/section-draft.ts";

/** One session's fields: temperatures in the unit of {@link temperatureField}. */
export interface ConditionsDraft {
  readonly sessionId: string;
  readonly name: string;
  readonly air: number | undefined;
  readonly bench: number | undefined;
  readonly ground: Ground | undefined;
}

/** How the temperature of the air is typed. */
export function temperatureField(): EntryField {
  return entryField({ unit: "°C", step: 1, minimum: -30, maximum: 55 });
}

/** All fields: parts of 1, altitude in m. */
export interface CourseDraft {
  readonly mix: Readonly<Record<CourseType, number | undefined>>;
  readonly altitude: number | undefined;
  readonly profile: CourseProfile | undefined;
  readonly sections: readonly SectionDraft[];
  readonly sessions: readonly ConditionsDraft[];
}

/** What is known now as a draft; the altitude starts as the venue's. */
export function courseDraft(ledger: Ledger, weekendId: string): CourseDraft {
  const plan = programme(ledger, weekendId);
  const course = knownValue(ledger, courseKind, weekendId);
  return {
    mix: course?.mix ?? { steep: 0, jumpy: 0, wet: 0 },
    altitude: numberIn({ unit: "m", step: 1 }, course?.altitude ?? plan?.venue?.altitude),
    profile: course?.profile,
    sections: sectionDrafts(course),
    sessions: (plan?.sessions ?? []).map(({ id, session }) => {
      const conditions = knownValue(ledger, conditionsKind, `${weekendId}/${id}`);
      return {
        sessionId: id,
        name: session.name,
        air: numberIn(temperatureField(), conditions?.air),
        bench: numberIn(temperatureField(), conditions?.bench),
        ground: conditions?.ground,
      };
    }),
  };
}

/** What the parts add up to, without the dust of floating point. */
export function sumOfParts(mix: CourseDraft["mix"]): number {
  return Number(courseTypes.reduce((sum, type) => sum + (mix[type] ?? 0), 0).toFixed(3));
}

/** Whether the parts can be saved as they are. */
export function isAccepted(mix: CourseDraft["mix"]): boolean {
  return readValue(courseKind, "course:draft", { mix, altitude: { value: 0, unit: "m" } }).ok;
}

/** Names of what is in dispute and would be settled by saving. */
export function disputedParts(ledger: Ledger, plan: Programme): readonly string[] {
  const course = ledger.current(courseKind, plan.weekendId).state === "disputed" ? [pit.course.theCourse] : [];
  const sessions = plan.sessions
    .filter(({ id }) => ledger.current(conditionsKind, `${plan.weekendId}/${id}`).state === "disputed")
    .map(({ session }) => pit.course.theConditions(session.name));
  return [...course, ...sessions];
}

export type CourseEntries =
  | { readonly ok: true; readonly entries: readonly WriteEntry[]; readonly written: readonly string[] }
  | { readonly ok: false; readonly sentence: string };

/**
 * The entries for what differs from what was known when the screen opened (`opened`), or is in dispute now. A session
 * of which nothing is typed is left out.
 */
export function courseEntries(
  ledger: Ledger,
  weekendId: string,
  draft: CourseDraft,
  opened: CourseDraft,
): CourseEntries {
  const entries: WriteEntry[] = [];
  const written: string[] = [];
  const changed = [
    ...(sameGround(draft, opened) ? [] : [pit.course.theCourse]),
    ...(sameProfile(draft, opened) ? [] : [courseProfile.theProfile]),
    ...(sameSections(draft, opened) ? [] : [sectionWords.theSections]),
  ];
  if (changed.length > 0 || needsWriting(ledger, courseKind, weekendId)) {
    const course = courseOf(draft);
    if (typeof course === "string") return { ok: false, sentence: course };
    entries.push(entryOf(ledger, courseKind, weekendId, course));
    written.push(...(changed.length > 0 ? changed : [pit.course.theCourse]));
  }
  for (const fields of draft.sessions) {
    const before = opened.sessions.find(({ sessionId }) => sessionId === fields.sessionId);
    const key = `${weekendId}/${fields.sessionId}`;
    const disputed = ledger.current(conditionsKind, key).state === "disputed";
    if (isEmpty(fields) && (!before || isEmpty(before)) && !disputed) continue;
    if (before && sameConditions(fields, before) && !disputed) continue;
    const conditions = conditionsOf(fields, knownValue(ledger, conditionsKind, key));
    if (typeof conditions === "string") return { ok: false, sentence: conditions };
    entries.push(entryOf(ledger, conditionsKind, key, conditions));
    written.push(pit.course.theConditions(fields.name));
  }
  return { ok: true, entries, written };
}

/** Something has to be written even when nothing was changed here: there is none yet, or there are two. */
function needsWriting(ledger: Ledger, kind: typeof courseKind, key: string): boolean {
  return ledger.current(kind, key).state !== "settled";
}

function courseOf({ mix, altitude, profile, sections }: CourseDraft): Course | string {
  const { steep, jumpy, wet } = mix;
  if (steep === undefined) return pit.course.needsPart(pit.course.parts.steep);
  if (jumpy === undefined) return pit.course.needsPart(pit.course.parts.jumpy);
  if (wet === undefined) return pit.course.needsPart(pit.course.parts.wet);
  if (altitude === undefined) return pit.course.needsAltitude;
  const named = sectionsOf(sections, profile?.points.at(-1)?.[0]);
  if (typeof named === "string") return named;
  return {
    mix: { steep, jumpy, wet },
    altitude: { value: altitude, unit: "m" },
    ...(profile && { profile: { points: profile.points.map(([at, height]) => [at, height]) } }),
    ...(named.length > 0 && { sections: named }),
  };
}

/** @param known what is stored, which stays as it was typed where it was not changed here */
function conditionsOf(
  { name, air, bench, ground }: ConditionsDraft,
  known: Conditions | undefined,
): Conditions | string {
  if (air === undefined) return pit.course.needsAir(name);
  if (ground === undefined) return pit.course.needsGround(name);
  const field = temperatureField();
  return {
    air: quantityIn(field, air, known?.air),
    ...(bench !== undefined && { bench: quantityIn(field, bench, known?.bench) }),
    ground,
  };
}

function entryOf(ledger: Ledger, kind: typeof courseKind | typeof conditionsKind, key: string, value: unknown) {
  const first = ledger.current<unknown>(kind, key).state === "absent";
  return { kind, key, value, ...(first && { cause: { type: "setup" } as const }) };
}

/** Whether the mix and the altitude are the same. */
export function sameGround(a: CourseDraft, b: CourseDraft): boolean {
  return courseTypes.every((type) => a.mix[type] === b.mix[type]) && a.altitude === b.altitude;
}

export function sameProfile(a: CourseDraft, b: CourseDraft): boolean {
  return JSON.stringify(a.profile) === JSON.stringify(b.profile);
}

export function sameSections(a: CourseDraft, b: CourseDraft): boolean {
  return JSON.stringify(a.sections) === JSON.stringify(b.sections);
}

export function sameConditions(a: ConditionsDraft, b: ConditionsDraft): boolean {
  return a.air === b.air && a.bench === b.bench && a.ground === b.ground;
}

function isEmpty({ air, bench, ground }: ConditionsDraft): boolean {
  return air === undefined && bench === undefined && ground === undefined;
}
