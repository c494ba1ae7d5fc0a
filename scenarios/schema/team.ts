/** A team as data: every value in the shape of its record, under the key that the record has. */
import * as z from "zod/mini";
import { baselineSchema } from "#core/team/baseline.ts";
import { bikeSchema } from "#core/team/bike.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { identifierSchema } from "#core/team/identifier.ts";
import { partSchema } from "#core/team/part.ts";
import { memberSchema, riderSchema } from "#core/team/people.ts";

/** `baselines` are by rider, then by course type. */
export const scenarioTeamSchema = z.strictObject({
  members: z.record(identifierSchema, memberSchema),
  riders: z.record(identifierSchema, riderSchema),
  bikes: z.record(identifierSchema, bikeSchema),
  parts: z.record(identifierSchema, partSchema),
  baselines: z.record(identifierSchema, z.partialRecord(z.enum(courseTypes), baselineSchema)),
});
export type ScenarioTeam = z.infer<typeof scenarioTeamSchema>;
