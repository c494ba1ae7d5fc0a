/** The kinds of record that describe the team. All live in the team's document. */
import { defineKind } from "#core/ledger/kind.ts";
import { baselineSchema, unsettableIn } from "./baseline.ts";
import { bikeSchema } from "./bike.ts";
import { courseTypes } from "./course-type.ts";
import { identifierOf, keyForm } from "./key-form.ts";
import { mountingSchema } from "./mounting.ts";
import { partSchema } from "./part.ts";
import { memberSchema, riderSchema } from "./people.ts";
import { sentBackSchema } from "./sent-back.ts";

/** Key: member. */
export const memberKind = defineKind({
  kind: "member",
  scope: "team",
  schema: memberSchema,
  merge: "fields",
  misfit: keyForm(identifierOf("member")),
});
/** Key: rider. */
export const riderKind = defineKind({
  kind: "rider",
  scope: "team",
  schema: riderSchema,
  merge: "fields",
  misfit: keyForm(identifierOf("rider")),
});
/** Key: bike. */
export const bikeKind = defineKind({
  kind: "bike",
  scope: "team",
  schema: bikeSchema,
  merge: "fields",
  misfit: keyForm(identifierOf("bike")),
});
/** Key: part. */
export const partKind = defineKind({
  kind: "part",
  scope: "team",
  schema: partSchema,
  merge: "fields",
  misfit: keyForm(identifierOf("part")),
});
/** Key: part. Where it came from is for people: two who put it on the same bike agree. */
export const mountingKind = defineKind({
  kind: "mounting",
  scope: "team",
  schema: mountingSchema,
  merge: "whole",
  fact: ({ bike }) => bike ?? null,
  misfit: keyForm(identifierOf("part")),
});
const baselineKey = keyForm(identifierOf("rider"), {
  name: "course type",
  accepts: (text) => courseTypes.some((type) => type === text),
});

/**
 * Key: rider/course type. Merged whole: a baseline is one setup that was ridden together, and half of one with half of
 * another is a setup that nobody has ridden.
 */
export const baselineKind = defineKind({
  kind: "baseline",
  scope: "team",
  schema: baselineSchema,
  merge: "whole",
  misfit: (key, baseline) => baselineKey(key) ?? (baseline && unsettableIn(baseline.values)),
});

/** Key: rider/course type. Merged whole: a note belongs to the setup that it was written about. */
export const sentBackKind = defineKind({
  kind: "sent-back",
  scope: "team",
  schema: sentBackSchema,
  merge: "whole",
  misfit: (key, sentBack) => baselineKey(key) ?? (sentBack && unsettableIn(sentBack.values)),
});

export const teamKinds = [memberKind, riderKind, bikeKind, partKind, mountingKind, baselineKind, sentBackKind] as const;
