/**
 * A setup that a manager did not take as a rider's baseline, with the note that says why. A proposal is no record of its
 * own: it is what is on the bike. So this holds what it was that was sent back, and any other setup is a new proposal.
 */
import * as z from "zod/mini";
import { baselineSchema, setupValuesSchema } from "./baseline.ts";
import { identifierSchema } from "./identifier.ts";

/**
 * `values` are the settings on the bike as they were typed, `sag` what would have gone along with them; `inForce` names
 * the records of the baseline that the manager had in view, so that a later approval is known without any clock; `note`
 * has 1 to 500 characters.
 */
export const sentBackSchema = z.object({
  weekend: identifierSchema,
  bike: identifierSchema,
  values: setupValuesSchema,
  sag: baselineSchema.shape.sag,
  inForce: z.optional(z.array(z.string()).check(z.maxLength(16))),
  note: z.string().check(z.regex(/\S/, "needs a note that says why"), z.maxLength(500)),
});
export type SentBack = z.infer<typeof sentBackSchema>;
