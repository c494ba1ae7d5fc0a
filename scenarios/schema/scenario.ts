/** An invented race weekend as data: who is there, what is planned, and what everybody does on which device. */
import * as z from "zod/mini";
import { identifierSchema, nameSchema } from "#core/team/identifier.ts";
import { conditionsSchema } from "#core/weekend/conditions.ts";
import { courseSchema } from "#core/weekend/course.ts";
import { raceWeekendSchema, sessionSchema } from "#core/weekend/race-weekend.ts";
import { venueSchema } from "#core/weekend/venue.ts";
import { stepSchema } from "./step.ts";
import { scenarioTeamSchema } from "./team.ts";

export const scenarioFormat = "pitslate scenario";
export const scenarioVersion = 1;

/** A device and the member who uses it. */
export const deviceSchema = z.strictObject({ id: identifierSchema, member: identifierSchema });

/**
 * `startsAt` is the clock of the first step, in UTC. `course` and `conditions` (by session) are what is known before
 * it; the venue is that of the weekend. Everything in `team` to `conditions` is on all devices when the steps begin.
 */
export const scenarioSchema = z.strictObject({
  format: z.literal(scenarioFormat),
  version: z.literal(scenarioVersion),
  name: nameSchema,
  about: z.string().check(z.maxLength(2000)),
  seed: z.int().check(z.gte(1), z.lte(0xffff_ffff)),
  startsAt: z.iso.datetime({ error: "a start is written in UTC, like 2026-06-12T06:30:00Z" }),
  team: scenarioTeamSchema,
  venue: z.extend(venueSchema, { id: identifierSchema }),
  weekend: z.extend(z.omit(raceWeekendSchema, { venue: true }), { id: identifierSchema }),
  sessions: z.record(identifierSchema, sessionSchema),
  course: z.optional(courseSchema),
  conditions: z.optional(z.record(identifierSchema, conditionsSchema)),
  devices: z.array(deviceSchema).check(z.minLength(1)),
  steps: z.array(stepSchema),
});
export type Scenario = z.infer<typeof scenarioSchema>;
