/** What the schema found wrong, as one sentence each: what, where, and what is allowed. */
import type * as z from "zod/mini";
import { fieldProblemOf } from "#core/ledger/field-problem.ts";
import { placeInWords, valueAt } from "./place-in-words.ts";

/** The sentence for one issue of a schema that was parsed with the message `unworded` from the ledger's field problems. */
export function issueSentence(issue: z.core.$ZodIssue, root: unknown): string {
  return `${placeInWords(issue.path, root)}: ${predicateOf(issue, root)}.`;
}

const adjusterExample = "an adjuster is named by its place and kind, like fork.main-pressure";

function predicateOf(issue: z.core.$ZodIssue, root: unknown): string {
  const given = valueAt(root, issue.path);
  const last = issue.path.at(-1);
  if (issue.code === "invalid_type" && given !== undefined) {
    if (issue.expected === "number" && last === "value") {
      return `${shown(given)} is not a number; allowed is a plain number with its unit beside it, like { "value": 62, "unit": "psi" }`;
    }
    if (issue.expected === "object" && (issue.path.at(-2) === "values" || last === "found")) {
      return `${shown(given)} is not a quantity; allowed is a number with its unit, like { "value": 62, "unit": "psi" }`;
    }
  }
  if (issue.code === "unrecognized_keys" && last === "values") {
    return `${issue.keys.map(shown).join(", ")} is no adjuster; ${adjusterExample}`;
  }
  if (issue.code === "invalid_value" && (last === "adjuster" || issue.path.at(-2) === "adjusters")) {
    return given === undefined
      ? `is missing; ${adjusterExample}`
      : `${shown(given)} is no adjuster; ${adjusterExample}`;
  }
  if (issue.code === "invalid_key") {
    const [why] = issue.issues;
    return `${shown(last)} cannot be used as a name here: ${why?.message ?? "it has another form"}`;
  }
  if (issue.code === "invalid_union" && "options" in issue && Array.isArray(issue.options)) {
    const allowed = issue.options.map(shown).join(", ");
    return given === undefined ? `is missing; allowed: ${allowed}` : `${shown(given)} is not one of ${allowed}`;
  }
  const { path, sentence } = fieldProblemOf(issue, root);
  return path === "" ? sentence.replace(/^The value /, "") : sentence.slice(path.length + 2);
}

function shown(given: unknown): string {
  if (typeof given === "string") return `"${given.slice(0, 60)}"`;
  return typeof given === "object" && given !== null ? "what was given" : String(given);
}
