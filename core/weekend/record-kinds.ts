/** The kinds of record of a race weekend. */

import { defineKind } from "#core/ledger/kind.ts";
import { dimensionOf } from "#core/quantity/unit.ts";
import { isAdjusterPath, unsettableAt } from "#core/team/adjuster.ts";
import { identifierOf, keyForm } from "#core/team/key-form.ts";
import { conditionsSchema } from "./conditions.ts";
import { courseSchema } from "./course.ts";
import { decisionSchema } from "./decision.ts";
import { noRunSchema } from "./no-run.ts";
import { raceWeekendSchema, sessionSchema } from "./race-weekend.ts";
import { runSchema } from "./run.ts";
import { settingSchema } from "./setting.ts";
import { venueSchema } from "./venue.ts";

const weekendKey = keyForm(identifierOf("weekend"));
const sessionKey = keyForm(identifierOf("weekend"), identifierOf("session"));
const runKey = keyForm(identifierOf("rider"), identifierOf("run"));
const settingKeyForm = keyForm(identifierOf("rider"), identifierOf("bike"), {
  name: "place.adjuster",
  accepts: isAdjusterPath,
});

/** Key: venue. */
export const venueKind = defineKind({
  kind: "venue",
  scope: "team",
  schema: venueSchema,
  merge: "fields",
  misfit: keyForm(identifierOf("venue")),
});
/** Key: weekend. */
export const weekendKind = defineKind({
  kind: "weekend",
  scope: "team",
  schema: raceWeekendSchema,
  merge: "fields",
  misfit: weekendKey,
});
/** Key: weekend. */
export const courseKind = defineKind({
  kind: "course",
  scope: "team",
  schema: courseSchema,
  merge: "fields",
  misfit: weekendKey,
});
/** Key: weekend/session. */
export const sessionKind = defineKind({
  kind: "session",
  scope: "team",
  schema: sessionSchema,
  merge: "fields",
  misfit: sessionKey,
});
/** Key: weekend/session. */
export const conditionsKind = defineKind({
  kind: "conditions",
  scope: "team",
  schema: conditionsSchema,
  merge: "fields",
  misfit: sessionKey,
});
/**
 * Key: rider/bike/place.adjuster. Two settings are the same fact when the same value was set, in the same unit; for a
 * pressure also in the same surroundings, since 62 psi at 12 °C and 62 psi at 28 °C are not the same air in the chamber.
 */
export const settingKind = defineKind({
  kind: "setting",
  scope: "rider",
  schema: settingSchema,
  merge: "whole",
  fact: ({ quantity, heldAt }) => (dimensionOf(quantity.unit) === "pressure" ? { quantity, heldAt } : quantity),
  misfit: (key, setting) =>
    settingKeyForm(key) ?? (setting && unsettableAt(key.slice(key.lastIndexOf("/") + 1), setting.quantity)),
});
/** Key: rider/run. */
export const runKind = defineKind({ kind: "run", scope: "rider", schema: runSchema, merge: "fields", misfit: runKey });
/** Key: rider/run. */
export const decisionKind = defineKind({
  kind: "decision",
  scope: "rider",
  schema: decisionSchema,
  merge: "fields",
  misfit: runKey,
});
/** Key: rider/weekend/session. Two reasons are no dispute: either way nobody has to wait for a run. */
export const noRunKind = defineKind({
  kind: "no-run",
  scope: "rider",
  schema: noRunSchema,
  merge: "whole",
  fact: () => "no run",
  misfit: keyForm(identifierOf("rider"), identifierOf("weekend"), identifierOf("session")),
});

export const weekendKinds = [
  venueKind,
  weekendKind,
  courseKind,
  sessionKind,
  conditionsKind,
  settingKind,
  runKind,
  decisionKind,
  noRunKind,
] as const;
