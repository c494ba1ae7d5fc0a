/** What is wrong with a field, as facts beside the English sentence. */
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { type FieldFault, fieldProblemOf, unworded } from "#core/ledger/field-problem.ts";
import { quantitySchema } from "#core/team/quantity-schema.ts";

const cases: readonly (readonly [string, z.ZodMiniType, unknown, FieldFault])[] = [
  ["missing", z.string(), undefined, { type: "missing" }],
  ["missing from a list", z.enum(["soft", "hard"]), undefined, { type: "missing", allowed: ["soft", "hard"] }],
  ["of another type", z.int(), "x", { type: "wrong type", given: "x", expected: "number" }],
  ["a list in place of a text", z.string(), [1], { type: "wrong type", given: undefined, expected: "string" }],
  ["yes in place of a number", z.number(), true, { type: "wrong type", given: true, expected: "number" }],
  ["not in the list", z.enum(["soft", "hard"]), "wet", { type: "not one of", given: "wet", allowed: ["soft", "hard"] }],
  ["too long", z.string().check(z.maxLength(2)), "abc", { type: "too many", of: "characters", most: 2 }],
  ["too short a list", z.array(z.int()).check(z.minLength(1)), [], { type: "too few", of: "entries", least: 1 }],
  [
    "above the limit",
    z.number().check(z.maximum(5)),
    6,
    { type: "out of range", side: "above", exclusive: false, given: 6, limit: 5 },
  ],
  [
    "on a limit that is not allowed itself",
    z.number().check(z.positive()),
    0,
    { type: "out of range", side: "below", exclusive: true, given: 0, limit: 0 },
  ],
  ["between two steps", z.number().check(z.multipleOf(5)), 7, { type: "not a multiple", given: 7, step: 5 }],
  ["of another form", z.iso.date(), "May", { type: "wrong form", given: "May" }],
  ["with more than it may have", z.strictObject({}), { speed: 1 }, { type: "unknown fields", names: ["speed"] }],
  [
    "of a form that the schema words itself",
    z.string().check(z.regex(/^[a-z]$/, { error: "one small letter" })),
    "abc",
    { type: "own words", sentence: "one small letter" },
  ],
  ["of another type, whatever the schema says of it", z.int({ error: "no count" }), undefined, { type: "missing" }],
  [
    "a quantity outside its range",
    quantitySchema("mass", { minimum: { value: 30, unit: "kg" }, maximum: { value: 160, unit: "kg" } }),
    { value: 20, unit: "kg" },
    {
      type: "outside",
      given: { value: 20, unit: "kg" },
      minimum: { value: 30, unit: "kg" },
      maximum: { value: 160, unit: "kg" },
    },
  ],
];

describe("The facts of a field that is", () => {
  it.each(cases)("%s", (_, schema, value, fault) => {
    const parsed = z.safeParse(schema, value, { error: () => unworded });
    expect(parsed.error?.issues.map((issue) => fieldProblemOf(issue, value).problem)).toEqual([fault]);
  });

  it("a quantity's number have its unit with them", () => {
    const schema = z.object({ mass: z.object({ value: z.number().check(z.maximum(200)), unit: z.string() }) });
    const value = { mass: { value: 720, unit: "kg" } };
    const parsed = z.safeParse(schema, value, { error: () => unworded });
    expect(parsed.error?.issues.map((issue) => fieldProblemOf(issue, value))).toEqual([
      {
        path: "mass",
        sentence: "mass: 720 kg is above the allowed 200 kg",
        problem: { type: "out of range", side: "above", exclusive: false, given: 720, limit: 200, unit: "kg" },
      },
    ]);
  });

  it("long are cut where the text was too long to be shown", () => {
    const [issue] = z.safeParse(z.int(), "x".repeat(99), { error: () => unworded }).error?.issues ?? [];
    expect(issue && fieldProblemOf(issue, "x".repeat(99)).problem).toMatchObject({ given: `${"x".repeat(40)}…` });
  });
});
