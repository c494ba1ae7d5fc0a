/** A bike: whose it is, which parts are on it, and the few dimensions that the physics needs. */
import * as z from "zod/mini";
import { identifierSchema, nameSchema } from "./identifier.ts";
import { quantitySchema } from "./quantity-schema.ts";

/**
 * `sprungMass` is the bike without wheels and lower legs, without the rider. `forkAngle` is the fork's angle from the
 * vertical. `rearWheelTravel` over the shock's stroke gives the mean leverage ratio.
 */
export const bikeSchema = z.object({
  name: nameSchema,
  rider: identifierSchema,
  sprungMass: quantitySchema("mass", { minimum: { value: 3, unit: "kg" }, maximum: { value: 30, unit: "kg" } }),
  forkAngle: quantitySchema("angle", { minimum: { value: 5, unit: "°" }, maximum: { value: 45, unit: "°" } }),
  rearWheelTravel: z.optional(
    quantitySchema("length", { minimum: { value: 60, unit: "mm" }, maximum: { value: 300, unit: "mm" } }),
  ),
  parts: z.object({
    fork: identifierSchema,
    shock: z.optional(identifierSchema),
    "front-tyre": identifierSchema,
    "rear-tyre": identifierSchema,
  }),
});
export type Bike = z.infer<typeof bikeSchema>;
