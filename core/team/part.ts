/**
 * A part is generic: what it is (its archetype), where it sits, its geometry as
 * the team measured or read it off the part, and its adjusters with their limits.
 */
import * as z from "zod/mini";
import { type Adjuster, type AdjusterKind, adjusterSchema } from "./adjuster.ts";
import { nameSchema } from "./identifier.ts";
import { places } from "./place.ts";
import { quantitySchema } from "./quantity-schema.ts";

const length = quantitySchema("length", { minimum: { value: 1, unit: "mm" }, maximum: { value: 400, unit: "mm" } });
const area = quantitySchema("area", { minimum: { value: 1, unit: "mm²" }, maximum: { value: 20_000, unit: "mm²" } });
const volume = quantitySchema("volume", { minimum: { value: 0.1, unit: "ml" }, maximum: { value: 5000, unit: "ml" } });
const pressure = quantitySchema("pressure", {
  minimum: { value: 1, unit: "psi" },
  maximum: { value: 500, unit: "psi" },
});

/** An air spring with one positive chamber, or with a secondary chamber that acts late in the stroke. */
export const airGeometrySchema = z.object({
  stroke: length,
  positiveArea: area,
  negativeArea: area,
  positiveVolume: volume,
  negativeVolume: volume,
  equalisingStroke: z.optional(
    quantitySchema("length", { minimum: { value: 0, unit: "mm" }, maximum: { value: 50, unit: "mm" } }),
  ),
  secondaryVolume: z.optional(volume),
  spacerVolume: z.optional(volume),
});

/** A coil spring: `threadPitch` is the preload of one turn of its collar. */
export const coilGeometrySchema = z.object({ stroke: length, threadPitch: length });

/** Tyre: the lower of the two marked maxima holds. */
export const tyreGeometrySchema = z.object({ tyreMarkedMaximum: pressure, rimMarkedMaximum: pressure });

/** An adjuster's address on a bike is its place and its kind, so a part has one of a kind at most. */
const adjusters = z.array(adjusterSchema).check(
  z.refine((all) => new Set(all.map(({ kind }) => kind)).size === all.length, {
    error: "a part has one adjuster of a kind at most",
  }),
);

const common = { name: nameSchema, place: z.enum(places), adjusters };

export const partSchema = z.discriminatedUnion("archetype", [
  z.object({ archetype: z.literal("air"), ...common, geometry: airGeometrySchema }),
  z.object({ archetype: z.literal("two-chamber air"), ...common, geometry: airGeometrySchema }),
  z.object({ archetype: z.literal("coil"), ...common, geometry: coilGeometrySchema }),
  z.object({ archetype: z.literal("tyre"), ...common, geometry: tyreGeometrySchema }),
]);
export type Part = z.infer<typeof partSchema>;

/** The adjuster of `kind` that `part` has, if it has one. */
export function adjusterOf(part: Part, kind: AdjusterKind): Adjuster | undefined {
  return part.adjusters.find((adjuster) => adjuster.kind === kind);
}
