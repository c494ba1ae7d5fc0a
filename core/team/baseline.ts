/**
 * A rider's known-good setup for one sort of course: a value for each adjuster
 * of the bike, with the surroundings and the rider's mass it was found at.
 * Pressures are gauge readings at `heldAt`.
 */
import * as z from "zod/mini";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { type AdjusterPath, adjusterPaths, unsettableAt } from "./adjuster.ts";
import { grounds } from "./ground.ts";
import { identifierSchema } from "./identifier.ts";
import { riderMassSchema } from "./people.ts";
import { anyQuantitySchema, quantitySchema } from "./quantity-schema.ts";
import { ridingStyles } from "./riding-style.ts";
import { surroundingsSchema } from "./surroundings.ts";

/** Values by adjuster. Whether each is within its part's limits is checked against the part, not here. */
export const setupValuesSchema = z.partialRecord(
  z.enum(adjusterPaths as [AdjusterPath, ...AdjusterPath[]]),
  anyQuantitySchema,
);
export type SetupValues = Readonly<Partial<Record<AdjusterPath, TypedQuantity>>>;

/** The first value that no part can ever be set to, in words; undefined when there is none. */
export function unsettableIn(values: SetupValues): string | undefined {
  for (const [path, quantity] of Object.entries(values) as [AdjusterPath, TypedQuantity][]) {
    const why = unsettableAt(path, quantity);
    if (why !== undefined) return why;
  }
  return undefined;
}

const sag = quantitySchema("length", { minimum: { value: 1, unit: "mm" }, maximum: { value: 200, unit: "mm" } });

export const baselineSchema = z.object({
  bike: identifierSchema,
  values: setupValuesSchema,
  heldAt: surroundingsSchema,
  mass: riderMassSchema,
  /** How the rider rode when it was found; absent counts as now. */
  style: z.optional(z.enum(ridingStyles)),
  /** The ground it was found on: what that ground asks for is in the values already. */
  ground: z.optional(z.enum(grounds)),
  sag: z.optional(z.object({ fork: z.optional(sag), shock: z.optional(sag) })),
  weekend: z.optional(identifierSchema),
  note: z.optional(z.string().check(z.maxLength(500))),
});
export type Baseline = z.infer<typeof baselineSchema>;
