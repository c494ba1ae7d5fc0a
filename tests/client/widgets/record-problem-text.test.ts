/** What the screens say of a refused record, beside what programs are told in English. */
import { describe, expect, it, test } from "vitest";
import * as z from "zod/mini";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { fieldProblemOf, unworded } from "#core/ledger/field-problem.ts";
import { quantitySchema } from "#core/team/quantity-schema.ts";

const mass = quantitySchema("mass", { minimum: { value: 30, unit: "kg" }, maximum: { value: 160, unit: "kg" } });
const cases: readonly (readonly [z.ZodMiniType, unknown])[] = [
  [z.string(), undefined],
  [z.enum(["soft", "hard"]), undefined],
  [z.int(), "x"],
  [z.string(), [1]],
  [z.boolean(), null],
  [z.enum(["soft", "hard"]), "wet"],
  [z.string().check(z.maxLength(2)), "abc"],
  [z.array(z.int()).check(z.maxLength(2)), [1, 2, 3]],
  [z.array(z.int()).check(z.minLength(2)), []],
  [z.number().check(z.maximum(5)), 6],
  [z.number().check(z.minimum(0.001)), 0.0004],
  [z.number().check(z.positive()), 0],
  [z.number().check(z.multipleOf(5)), 7],
  [z.iso.date(), "May"],
  [z.strictObject({}), { speed: 1 }],
  [z.union([z.string(), z.number()]), true],
  [z.string().check(z.refine((text) => text === "")), "x"],
  [z.string().check(z.regex(/^[a-z]$/, { error: "one small letter" })), "abc"],
  [mass, { value: 20, unit: "kg" }],
];

describe("What is wrong with a field", () => {
  it.each(cases)("is said alike on the screen and to programs: %o of %j", (schema, given) => {
    const value = { field: given };
    const parsed = z.safeParse(z.object({ field: schema }), value, { error: () => unworded });
    const fields = (parsed.error?.issues ?? []).map((issue) => fieldProblemOf(issue, value));
    expect(fields).toHaveLength(1);
    const sentence = fields[0]?.sentence.replace("field", "Field");
    expect(recordProblemText({ type: "bad value", subject: "rider:alder", fields })).toBe(`${sentence}.`);
  });
});

test.each([
  [{ type: "too large", bytes: 20_000, allowedBytes: 16_384 }, /20000.*16384/],
  [{ type: "other version", version: 2 }, /another version/],
  [{ type: "unknown kind", kind: "horse" }, /horse/],
  [{ type: "bad key", kind: "rider", key: "a b" }, /a b.*rider/],
  [{ type: "misfit", subject: "rider:alder", sentence: "a bike has one rider" }, /^A bike has one rider\.$/],
  [{ type: "wrong document", subject: "rider:alder", document: "team", allowed: "rider/…" }, /team/],
] as const)("%o is told with its facts", (problem, expected) => {
  expect(recordProblemText(problem)).toMatch(expected);
});
