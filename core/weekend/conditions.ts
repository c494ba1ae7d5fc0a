/** What a session is expected to be like, and how warm it is where the bikes are set up for it. */
import * as z from "zod/mini";
import { grounds } from "#core/team/ground.ts";
import { airTemperatureSchema } from "#core/team/surroundings.ts";

/** Without `bench` the bikes are taken to be set up at the session's own temperature. */
export const conditionsSchema = z.object({
  air: airTemperatureSchema,
  bench: z.optional(airTemperatureSchema),
  ground: z.enum(grounds),
});
export type Conditions = z.infer<typeof conditionsSchema>;
