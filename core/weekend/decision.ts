/** What the mechanic decided on a run's feedback: changed something, or left the bike as it is. */
import * as z from "zod/mini";

export const decisionSchema = z.object({
  outcome: z.enum(["adjusted", "left as it is"]),
  note: z.optional(z.string().check(z.maxLength(500))),
});
export type Decision = z.infer<typeof decisionSchema>;
