/**
 * Values that a schema accepts and that nobody with a bike would enter: a walk over the schema and a plausible sample,
 * in which every field may be replaced by the strangest thing that is still allowed there.
 */
import fc from "fast-check";
import * as z from "zod/mini";
import { dimensionOf, type Unit } from "#core/quantity/unit.ts";

type Schema = z.core.$ZodType;

/** Numbers at which arithmetic, loops and rounding go wrong, and some at which they do not. */
const strangeNumbers: readonly number[] = [
  ...[
    0, 5e-324, 1e-300, 1e-9, 1e-6, 0.001, 0.01, 0.05, 0.1, 0.2, 0.25, 0.333, 0.5, 0.7, 0.999999, 1, 1.5, 2, 2.5, 3, 4,
  ],
  ...[5, 7, 8, 10, 12, 15, 16, 20, 27, 30, 32, 40, 45, 55, 60, 70, 80, 85, 99, 100, 110, 120, 150, 180, 200, 220, 290],
  ...[300, 350, 400, 500, 900, 1000, 1500, 3600, 5000, 20_000, 1e6, 2 ** 53, 1e15, 1e21, 1e100, 1e300, 1e308],
  ...[-0, -1e-9, -0.001, -0.5, -1, -5, -14.6, -14.7, -20, -30, -101.3, -300, -400, -1e4, -1e15, -1e308],
];

const strangeTexts: readonly string[] = [
  ...["alder", "alder-1", "birch", "fork-1", "shock-1", "tyre-1", "tyre-2", "kestrel", "otter", "ridge", "p1", "race"],
  ...["constructor", "toString", "hasOwnProperty", "__proto__", "x".repeat(64), "a".repeat(500), "a".repeat(1000)],
  ...["Alder", "\u202eredlA", "🚵".repeat(40), " ", "<b>", "\u0000", "", "sag-too-deep", "rebound-slow"],
  ...["0000-01-01", "0001-01-01", "2026-05-29", "9999-12-31", "2024-02-29", "0000-01-01T00:00", "2026-05-29T10:30"],
  ...["9999-12-31T23:59:59.999999999", "2026-05-29T10:30Z"],
  ...Array.from({ length: 40 }, (_, n) => recordIdOf(n)),
];

/** The n-th record id of a hostile team. */
export function recordIdOf(n: number): string {
  return `01${String(n).padStart(24, "0")}`;
}

/** How many times as often the sample's own value stands as a strange one. */
const PLAUSIBLE = 40;

/** Values of `schema` near `sample`; without a sample anything that it accepts. */
export function hostileValue(schema: Schema, sample?: unknown): fc.Arbitrary<unknown> {
  const strange = strangeValue(schema, sample);
  if (sample === undefined) return strange;
  return fc
    .oneof(
      { weight: PLAUSIBLE, arbitrary: isLeaf(schema) ? fc.constant(sample) : strange },
      { weight: 1, arbitrary: strange },
    )
    .map((value) => (z.safeParse(schema, value).success ? value : sample));
}

function strangeValue(schema: Schema, sample: unknown): fc.Arbitrary<unknown> {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  switch (def.type) {
    case "object":
      return "value" in def.shape && "unit" in def.shape
        ? quantityOf(schema, def.shape, sample)
        : objectOf(def.shape, sample);
    case "optional":
      return hostileValue(def.innerType, sample);
    case "array":
      return arrayOf(def.element, sample);
    case "tuple": {
      const known = (sample ?? []) as readonly unknown[];
      return fc.tuple(...def.items.map((item, index) => hostileValue(item, known[index])));
    }
    case "record":
      return fc
        .dictionary(hostileValue(def.keyType) as fc.Arbitrary<string>, hostileValue(def.valueType), { maxKeys: 4 })
        .map((strange) => ({ ...(sample as object | undefined), ...strange }));
    case "union":
      return fc.oneof(
        ...def.options.map((option) => {
          const fits = sample !== undefined && z.safeParse(option, sample).success;
          return { weight: fits ? PLAUSIBLE : 1, arbitrary: hostileValue(option, fits ? sample : undefined) };
        }),
      );
    case "enum":
      return fc.constantFrom(...Object.values(def.entries));
    case "literal":
      return fc.constantFrom(...def.values);
    case "number":
      return accepted(schema, strangeNumbers);
    case "string":
      return accepted(schema, strangeTexts);
    default:
      throw new Error(`There are no hostile values of the type "${def.type}" yet.`);
  }
}

function isLeaf(schema: Schema): boolean {
  const { def } = (schema as z.core.$ZodTypes)._zod;
  if (def.type === "optional") return isLeaf(def.innerType);
  if (def.type === "object") return "value" in def.shape && "unit" in def.shape;
  return def.type !== "array" && def.type !== "tuple" && def.type !== "record" && def.type !== "union";
}

/** An optional field of the sample may be missing, and one that the sample lacks may be there. */
function objectOf(shape: Readonly<Record<string, Schema>>, sample: unknown): fc.Arbitrary<unknown> {
  const known = (sample ?? {}) as Readonly<Record<string, unknown>>;
  const fields = Object.entries(shape).map(([name, schema]) => {
    const field = hostileValue(schema, known[name]).map((value) => [[name, value]] as const);
    if (schema._zod.optin === undefined) return field;
    const isThere = known[name] !== undefined;
    return fc.oneof(
      { weight: isThere ? PLAUSIBLE : 1, arbitrary: field },
      { weight: isThere ? 1 : 3, arbitrary: fc.constant([]) },
    );
  });
  return fc.tuple(...fields).map((entries) => Object.fromEntries(entries.flat()));
}

function arrayOf(element: Schema, sample: unknown): fc.Arbitrary<unknown> {
  const known = (sample ?? []) as readonly unknown[];
  const anyOf =
    known.length > 0 ? fc.constantFrom(...known).chain((one) => hostileValue(element, one)) : hostileValue(element);
  return fc.oneof(
    { weight: PLAUSIBLE, arbitrary: fc.tuple(...known.map((one) => hostileValue(element, one))) },
    { weight: 2, arbitrary: fc.array(anyOf, { maxLength: 14 }) },
    {
      weight: 1,
      arbitrary: fc.constant(Array.from({ length: 64 }, () => known[0]).filter((one) => one !== undefined)),
    },
  );
}

/** Where the sample has a quantity, most strange ones are of its dimension: the others are refused wherever it matters. */
function quantityOf(schema: Schema, shape: Readonly<Record<string, Schema>>, sample: unknown): fc.Arbitrary<unknown> {
  const { def } = (shape.unit as z.core.$ZodTypes)._zod;
  if (def.type !== "enum") throw new Error("A quantity's unit is one of a list.");
  const units = Object.values(def.entries) as Unit[];
  const all = accepted(schema, quantitiesIn(units));
  if (sample === undefined) return all;
  const dimension = dimensionOf((sample as { unit: Unit }).unit);
  const alike = quantitiesIn(units.filter((unit) => dimensionOf(unit) === dimension));
  const taken = alike.filter((candidate) => z.safeParse(schema, candidate).success);
  return fc.oneof({ weight: 5, arbitrary: fc.constantFrom(...taken) }, { weight: 1, arbitrary: all });
}

function quantitiesIn(units: readonly Unit[]): readonly { readonly value: number; readonly unit: Unit }[] {
  return units.flatMap((unit) => strangeNumbers.map((value) => ({ value, unit })));
}

/** Those that the schema takes; the generator is made once for each schema, because there are hundreds to try. */
function accepted(schema: Schema, candidates: readonly unknown[]): fc.Arbitrary<unknown> {
  const known = acceptedBySchema.get(schema);
  if (known !== undefined) return known;
  const taken = candidates.filter((candidate) => z.safeParse(schema, candidate).success);
  if (taken.length === 0) throw new Error("The schema takes none of the strange values: add one that it does.");
  const made = fc.constantFrom(...taken);
  acceptedBySchema.set(schema, made);
  return made;
}

const acceptedBySchema = new WeakMap<Schema, fc.Arbitrary<unknown>>();
