import type * as z from "zod/mini";
import { isJsonObject } from "./plain-json.ts";

/** One thing wrong with a value: where, and a sentence without a full stop saying what and what is allowed. */
export type FieldProblem = { readonly path: string; readonly sentence: string };

/**
 * Message that a schema check without words of its own gets, so that an
 * author's own message can be told from the library's.
 */
export const unworded = "unworded";

/** Turns a schema issue (parsed with {@link unworded} as the error) about `root` into words. */
export function fieldProblemOf(issue: z.core.$ZodIssue, root: unknown): FieldProblem {
  const steps = issue.path.map(String);
  const given = valueAt(root, steps);
  const unit = unitBeside(root, steps);
  const path = (unit === undefined ? steps : steps.slice(0, -1)).join(".");
  const predicate = issue.message === unworded ? predicateOf(issue, given, unit) : issue.message;
  return { path, sentence: path === "" ? `The value ${predicate}` : `${path}: ${predicate}` };
}

function predicateOf(issue: z.core.$ZodIssue, given: unknown, unit: string | undefined): string {
  switch (issue.code) {
    case "too_big":
      return sizePredicate(issue.origin, given, unit, Number(issue.maximum), issue.inclusive === false, "above");
    case "too_small":
      return sizePredicate(issue.origin, given, unit, Number(issue.minimum), issue.inclusive === false, "below");
    case "invalid_type":
      return given === undefined ? "is missing" : `${shown(given)} is not ${articled(issue.expected)}`;
    case "invalid_value":
      return given === undefined
        ? `is missing; allowed: ${issue.values.map(shown).join(", ")}`
        : `${shown(given)} is not one of ${issue.values.map(shown).join(", ")}`;
    case "not_multiple_of":
      return `${withUnit(shown(given), unit)} is not a multiple of ${withUnit(String(issue.divisor), unit)}`;
    case "invalid_format":
      return `${shown(given)} is not in the form that is allowed here`;
    case "unrecognized_keys":
      return `has fields that are not allowed: ${issue.keys.join(", ")}`;
    case "invalid_union":
      return given === undefined ? "is missing" : `${shown(given)} is none of the allowed forms`;
    case "invalid_key":
    case "invalid_element":
      return "has an entry that is not allowed";
    case "custom":
      return `${withUnit(shown(given), unit)} is not allowed`;
  }
}

function sizePredicate(
  origin: string,
  given: unknown,
  unit: string | undefined,
  limit: number,
  exclusive: boolean,
  side: "above" | "below",
): string {
  if (origin === "string" || origin === "array") {
    const things = origin === "string" ? "characters" : "entries";
    return side === "above" ? `has more than the allowed ${limit} ${things}` : `needs at least ${limit} ${things}`;
  }
  const allowed = withUnit(String(limit), unit);
  const number = withUnit(shown(given), unit);
  return exclusive
    ? `${number} is not ${side === "above" ? "below" : "above"} ${allowed}`
    : `${number} is ${side} the allowed ${allowed}`;
}

const withUnit = (number: string, unit: string | undefined): string =>
  unit === undefined ? number : `${number} ${unit}`;

const typeNames: Readonly<Record<string, string>> = {
  int: "a whole number",
  number: "a number",
  string: "a text",
  array: "a list",
  object: "an object",
  boolean: "yes or no",
};

const articled = (expected: string): string => typeNames[expected] ?? expected;

function shown(given: unknown): string {
  if (typeof given === "string") return given.length > 40 ? `"${given.slice(0, 40)}…"` : `"${given}"`;
  return typeof given === "object" && given !== null ? "what was given" : String(given);
}

function valueAt(root: unknown, steps: readonly string[]): unknown {
  let at: unknown = root;
  for (const step of steps) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, step)) return undefined;
    at = (at as Record<string, unknown>)[step];
  }
  return at;
}

/** The unit beside a quantity's number: quantities are `{ value, unit }` everywhere. */
function unitBeside(root: unknown, steps: readonly string[]): string | undefined {
  if (steps.at(-1) !== "value") return undefined;
  const quantity = valueAt(root, steps.slice(0, -1));
  return isJsonObject(quantity) && typeof quantity.unit === "string" ? quantity.unit : undefined;
}
