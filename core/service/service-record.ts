/** A service that was done on one part of a bike, with the settings that were on the bike before it. */
import * as z from "zod/mini";
import { setupValuesSchema } from "#core/team/baseline.ts";
import { identifierSchema } from "#core/team/identifier.ts";
import { serviceWorks } from "./service-work.ts";

/**
 * `settings` is what was on the bike, written down by the tool: whoever opens a part has to put it back.
 * `hoursBefore` are the hours (weighted, 0 to 5000) that were already ridden on it when it was entered: for a service
 * that was done before the team kept its hours here. `part` is the part that was opened; where a service does not say so,
 * it was the one that was at the place then.
 */
export const serviceSchema = z.object({
  bike: identifierSchema,
  place: z.enum(["fork", "shock"]),
  part: z.optional(identifierSchema),
  what: z.enum(serviceWorks),
  hoursBefore: z.optional(z.number().check(z.gte(0), z.lte(5000))),
  settings: setupValuesSchema,
  weekend: z.optional(identifierSchema),
  note: z.optional(z.string().check(z.maxLength(500))),
});
export type Service = z.infer<typeof serviceSchema>;
