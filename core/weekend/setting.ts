/**
 * What is set on a bike: one physical fact for each adjuster.
 *
 * `standing` is "on the bike" once a mechanic has put it there or seen it, and
 * "reported" while only the rider has said so. `heldAt` is where a pressure
 * was read; without it a reading cannot be carried to another temperature.
 */
import * as z from "zod/mini";
import { identifierSchema } from "#core/team/identifier.ts";
import { anyQuantitySchema } from "#core/team/quantity-schema.ts";
import { surroundingsSchema } from "#core/team/surroundings.ts";

export const standings = ["on the bike", "reported"] as const;

export const settingSchema = z.object({
  quantity: anyQuantitySchema,
  standing: z.enum(standings),
  heldAt: z.optional(surroundingsSchema),
  weekend: z.optional(identifierSchema),
  session: z.optional(identifierSchema),
});
export type Setting = z.infer<typeof settingSchema>;
