import type * as z from "zod/mini";
import { isJsonObject } from "./plain-json.ts";

/** One thing wrong with a value: where, a sentence in English without a full stop, and what is wrong as facts. */
export type FieldProblem = { readonly path: string; readonly sentence: string; readonly problem: FieldFault };

/** What was given for a field; undefined for a list or an object. */
export type Given = string | number | boolean | null | undefined;

/** A number with its unit. */
export type Quantity = { readonly value: number; readonly unit: string };

/** What is wrong with a field and what is allowed; numbers are in `unit` where there is one. */
export type FieldFault =
  /** A rule or form of the schema's own: its message, in English, that goes on after the field's name. */
  | { readonly type: "own words"; readonly sentence: string }
  | { readonly type: "missing"; readonly allowed?: readonly Given[] }
  | { readonly type: "wrong type"; readonly given: Given; readonly expected: string }
  | { readonly type: "not one of"; readonly given: Given; readonly allowed: readonly Given[] }
  | { readonly type: "too many"; readonly of: "characters" | "entries"; readonly most: number }
  | { readonly type: "too few"; readonly of: "characters" | "entries"; readonly least: number }
  /** `exclusive`: the limit itself is not allowed either. */
  | {
      readonly type: "out of range";
      readonly side: "above" | "below";
      readonly exclusive: boolean;
      readonly given: Given;
      readonly limit: number;
      readonly unit?: string;
    }
  /** Both ends are allowed. */
  | { readonly type: "outside"; readonly given: Quantity; readonly minimum: Quantity; readonly maximum: Quantity }
  | { readonly type: "not a multiple"; readonly given: Given; readonly step: number; readonly unit?: string }
  | { readonly type: "wrong form"; readonly given: Given }
  | { readonly type: "unknown fields"; readonly names: readonly string[] }
  | { readonly type: "no allowed form"; readonly given: Given }
  | { readonly type: "bad entry" }
  | { readonly type: "not allowed"; readonly given: Given; readonly unit?: string };

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
  const problem = faultOf(issue, given, unit);
  const predicate = issue.message === unworded ? describeFieldFault(problem) : issue.message;
  return { path, sentence: path === "" ? `The value ${predicate}` : `${path}: ${predicate}`, problem };
}

function faultOf(issue: z.core.$ZodIssue, value: unknown, unit: string | undefined): FieldFault {
  const given = givenOf(value);
  const inUnit = unit === undefined ? {} : { unit };
  const ownWords: FieldFault | undefined =
    issue.message === unworded ? undefined : { type: "own words", sentence: issue.message };
  switch (issue.code) {
    case "too_big":
    case "too_small":
      return sizeFault(issue, given, inUnit);
    case "invalid_type":
      return value === undefined ? { type: "missing" } : { type: "wrong type", given, expected: issue.expected };
    case "invalid_value": {
      const allowed = issue.values.map(givenOf);
      return value === undefined ? { type: "missing", allowed } : { type: "not one of", given, allowed };
    }
    case "not_multiple_of":
      return { type: "not a multiple", given, step: Number(issue.divisor), ...inUnit };
    case "invalid_format":
      return ownWords ?? { type: "wrong form", given };
    case "unrecognized_keys":
      return { type: "unknown fields", names: issue.keys };
    case "invalid_union":
      return value === undefined ? { type: "missing" } : { type: "no allowed form", given };
    case "invalid_key":
    case "invalid_element":
      return { type: "bad entry" };
    case "custom":
      return outsideOf(issue.params, value) ?? ownWords ?? { type: "not allowed", given, ...inUnit };
  }
}

/** A quantity outside its range, where the schema has said its range. */
function outsideOf(params: Readonly<Record<string, unknown>> | undefined, value: unknown): FieldFault | undefined {
  if (!isQuantity(value) || !isQuantity(params?.minimum) || !isQuantity(params.maximum)) return undefined;
  return { type: "outside", given: value, minimum: params.minimum, maximum: params.maximum };
}

function isQuantity(value: unknown): value is Quantity {
  return isJsonObject(value) && typeof value.value === "number" && typeof value.unit === "string";
}

function sizeFault(
  issue: z.core.$ZodIssueTooBig | z.core.$ZodIssueTooSmall,
  given: Given,
  inUnit: { readonly unit?: string },
): FieldFault {
  const limit = Number(issue.code === "too_big" ? issue.maximum : issue.minimum);
  if (issue.origin === "string" || issue.origin === "array") {
    const of = issue.origin === "string" ? "characters" : "entries";
    return issue.code === "too_big" ? { type: "too many", of, most: limit } : { type: "too few", of, least: limit };
  }
  const side = issue.code === "too_big" ? "above" : "below";
  return { type: "out of range", side, exclusive: issue.inclusive === false, given, limit, ...inUnit };
}

/** What is wrong with a field, in English, without the field's name. */
function describeFieldFault(fault: FieldFault): string {
  switch (fault.type) {
    case "own words":
      return fault.sentence;
    case "missing":
      return fault.allowed ? `is missing; allowed: ${fault.allowed.map(shown).join(", ")}` : "is missing";
    case "wrong type":
      return `${shown(fault.given)} is not ${typeNames[fault.expected] ?? fault.expected}`;
    case "not one of":
      return `${shown(fault.given)} is not one of ${fault.allowed.map(shown).join(", ")}`;
    case "too many":
      return `has more than the allowed ${fault.most} ${fault.of}`;
    case "too few":
      return `needs at least ${fault.least} ${fault.of}`;
    case "out of range": {
      const limit = withUnit(String(fault.limit), fault.unit);
      const number = withUnit(shown(fault.given), fault.unit);
      return fault.exclusive
        ? `${number} is not ${fault.side === "above" ? "below" : "above"} ${limit}`
        : `${number} is ${fault.side} the allowed ${limit}`;
    }
    case "outside":
      return `${inWords(fault.given)} is outside ${inWords(fault.minimum)} to ${inWords(fault.maximum)}`;
    case "not a multiple":
      return `${withUnit(shown(fault.given), fault.unit)} is not a multiple of ${withUnit(String(fault.step), fault.unit)}`;
    case "wrong form":
      return `${shown(fault.given)} is not in the form that is allowed here`;
    case "unknown fields":
      return `has fields that are not allowed: ${fault.names.join(", ")}`;
    case "no allowed form":
      return `${shown(fault.given)} is none of the allowed forms`;
    case "bad entry":
      return "has an entry that is not allowed";
    case "not allowed":
      return `${withUnit(shown(fault.given), fault.unit)} is not allowed`;
  }
}

const inWords = ({ value, unit }: Quantity): string => `${value} ${unit}`;

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

/** What was given as a fact: long texts cut, lists and objects left out. */
function givenOf(value: unknown): Given {
  if (typeof value === "string") return value.length > 40 ? `${value.slice(0, 40)}…` : value;
  if (typeof value === "number" || typeof value === "boolean" || value === null) return value;
  return typeof value === "object" || value === undefined ? undefined : String(value);
}

function shown(given: Given): string {
  return given === undefined ? "what was given" : typeof given === "string" ? `"${given}"` : String(given);
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
