/** The members of the team, and what the setup needs to know of a rider. */
import * as z from "zod/mini";
import { identifierSchema, nameSchema } from "./identifier.ts";
import { quantitySchema } from "./quantity-schema.ts";
import { ridingStyles } from "./riding-style.ts";

export const roles = ["mechanic", "rider", "manager"] as const;
export type Role = (typeof roles)[number];

/** Somebody who uses the tool. A rider's membership names the rider. */
export const memberSchema = z.object({
  name: nameSchema,
  role: z.enum(roles),
  rider: z.optional(identifierSchema),
});
export type Member = z.infer<typeof memberSchema>;

const mass = quantitySchema("mass", { minimum: { value: 30, unit: "kg" }, maximum: { value: 160, unit: "kg" } });

/**
 * A rider: `mass` with all that is worn and carried. `frontShare` is the part of the sprung weight that the front
 * wheel carries in the rider's stance; absent until it was fitted or measured.
 */
export const riderSchema = z.object({
  name: nameSchema,
  plate: z.optional(z.int().check(z.positive(), z.lte(9999))),
  mass,
  bike: identifierSchema,
  /** How hard the rider loads the bike; absent counts as usual. */
  style: z.optional(z.enum(ridingStyles)),
  frontShare: z.optional(z.number().check(z.gte(0.2), z.lte(0.7))),
});
export type Rider = z.infer<typeof riderSchema>;

/** The mass of a rider, kitted. */
export const riderMassSchema = mass;
