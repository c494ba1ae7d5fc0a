import type { FieldProblem } from "./field-problem.ts";

/** Everything that a user or a peer can get wrong about a record. */
export type LedgerProblem =
  /** Carries something that JSON cannot, or is nested too deep. */
  | { readonly type: "not plain"; readonly path: string; readonly what: string }
  | { readonly type: "too large"; readonly bytes: number; readonly allowedBytes: number }
  /** Written by a version of the program that this one does not know. */
  | { readonly type: "other version"; readonly version: number }
  | { readonly type: "bad envelope"; readonly fields: readonly FieldProblem[] }
  | { readonly type: "unknown kind"; readonly kind: string }
  | { readonly type: "bad value"; readonly subject: string; readonly fields: readonly FieldProblem[] }
  | { readonly type: "wrong document"; readonly subject: string; readonly document: string; readonly allowed: string }
  /** The kind has no such thing, or the value cannot belong to it. */
  | { readonly type: "misfit"; readonly subject: string; readonly sentence: string }
  /** The same id came with different contents, so neither is trusted. */
  | { readonly type: "conflicting"; readonly record: string }
  | { readonly type: "bad key"; readonly kind: string; readonly key: string }
  | { readonly type: "unknown record"; readonly record: string }
  | { readonly type: "no single previous value"; readonly record: string; readonly subject: string }
  /** Records that this one superseded have not arrived or cannot be read. */
  | { readonly type: "previous value not here"; readonly record: string; readonly missing: readonly string[] }
  | { readonly type: "nothing to void"; readonly subject: string }
  | { readonly type: "subject twice"; readonly subject: string };

/** One sentence for a person: what, where, and what is allowed. */
export function describeLedgerProblem(problem: LedgerProblem): string {
  switch (problem.type) {
    case "not plain":
      return `${problem.path === "" ? "The record" : problem.path}: ${problem.what} cannot be kept; allowed are texts, numbers, yes or no, lists and objects.`;
    case "too large":
      return `The record takes ${problem.bytes} bytes; at most ${problem.allowedBytes} are allowed.`;
    case "other version":
      return `The record was written by another version of the program (record version ${problem.version}); this one reads version 1.`;
    case "bad envelope":
      return `Not a record: ${sentences(problem.fields)}.`;
    case "unknown kind":
      return `This version of the program does not know records of the kind "${problem.kind}".`;
    case "bad value":
      return `${problem.subject}: ${sentences(problem.fields)}.`;
    case "misfit":
      return `${problem.subject}: ${problem.sentence}.`;
    case "wrong document":
      return `${problem.subject} does not belong in the document "${problem.document}"; it is allowed in ${problem.allowed}.`;
    case "conflicting":
      return `The record ${problem.record} exists with different contents; none of them is used, so enter the value again.`;
    case "bad key":
      return `"${problem.key}" cannot name a ${problem.kind}; allowed are 1 to 200 letters, digits and . _ ~ / -`;
    case "unknown record":
      return `The record ${problem.record} is not on this device, or cannot be read.`;
    case "no single previous value":
      return `${problem.subject} had no single value before the record ${problem.record}; choose the value by hand.`;
    case "previous value not here":
      return `The value before the record ${problem.record} is not on this device, or cannot be read; choose the value by hand.`;
    case "nothing to void":
      return `${problem.subject} has no value that could be withdrawn.`;
    case "subject twice":
      return `${problem.subject} is given twice in one entry; each may be given once.`;
  }
}

function sentences(fields: readonly FieldProblem[]): string {
  return fields.map(({ sentence }) => sentence).join("; ");
}
