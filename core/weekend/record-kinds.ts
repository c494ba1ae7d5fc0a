/** The kinds of record of a race weekend, and the list of all kinds there are. */
import { defineKind } from "#core/ledger/kind.ts";
import { teamKinds } from "#core/team/record-kinds.ts";
import { conditionsSchema } from "./conditions.ts";
import { courseSchema } from "./course.ts";
import { decisionSchema } from "./decision.ts";
import { raceWeekendSchema, sessionSchema } from "./race-weekend.ts";
import { runSchema } from "./run.ts";
import { settingSchema } from "./setting.ts";
import { venueSchema } from "./venue.ts";

/** Key: venue. */
export const venueKind = defineKind({ kind: "venue", scope: "team", schema: venueSchema, merge: "fields" });
/** Key: weekend. */
export const weekendKind = defineKind({ kind: "weekend", scope: "team", schema: raceWeekendSchema, merge: "fields" });
/** Key: weekend. */
export const courseKind = defineKind({ kind: "course", scope: "team", schema: courseSchema, merge: "fields" });
/** Key: weekend/session. */
export const sessionKind = defineKind({ kind: "session", scope: "team", schema: sessionSchema, merge: "fields" });
/** Key: weekend/session. */
export const conditionsKind = defineKind({
  kind: "conditions",
  scope: "team",
  schema: conditionsSchema,
  merge: "fields",
});
/** Key: rider/bike/place.adjuster. Two settings are the same fact when the same value was set, in the same unit. */
export const settingKind = defineKind({
  kind: "setting",
  scope: "rider",
  schema: settingSchema,
  merge: "whole",
  fact: (setting) => setting.quantity,
});
/** Key: rider/run. */
export const runKind = defineKind({ kind: "run", scope: "rider", schema: runSchema, merge: "fields" });
/** Key: rider/run. */
export const decisionKind = defineKind({ kind: "decision", scope: "rider", schema: decisionSchema, merge: "fields" });

/** Every kind of record that this version can read. */
export const allKinds = [
  ...teamKinds,
  venueKind,
  weekendKind,
  courseKind,
  sessionKind,
  conditionsKind,
  settingKind,
  runKind,
  decisionKind,
] as const;
