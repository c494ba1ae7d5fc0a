/** The kinds of record that describe the team. All live in the team's document. */
import { defineKind } from "#core/ledger/kind.ts";
import { baselineSchema } from "./baseline.ts";
import { bikeSchema } from "./bike.ts";
import { partSchema } from "./part.ts";
import { memberSchema, riderSchema } from "./people.ts";

/** Key: member. */
export const memberKind = defineKind({ kind: "member", scope: "team", schema: memberSchema, merge: "fields" });
/** Key: rider. */
export const riderKind = defineKind({ kind: "rider", scope: "team", schema: riderSchema, merge: "fields" });
/** Key: bike. */
export const bikeKind = defineKind({ kind: "bike", scope: "team", schema: bikeSchema, merge: "fields" });
/** Key: part. */
export const partKind = defineKind({ kind: "part", scope: "team", schema: partSchema, merge: "fields" });
/**
 * Key: rider/course type. Merged whole: a baseline is one setup that was ridden together, and half of one with half of
 * another is a setup that nobody has ridden.
 */
export const baselineKind = defineKind({ kind: "baseline", scope: "team", schema: baselineSchema, merge: "whole" });

export const teamKinds = [memberKind, riderKind, bikeKind, partKind, baselineKind] as const;
