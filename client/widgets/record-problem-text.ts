/** Why something cannot be written down, in the language of the device. */
import { formatTag } from "#client/text/language.ts";
import { recordProblems as words } from "#client/text/record-problems.ts";
import type { FieldFault, FieldProblem, Given, Quantity } from "#core/ledger/field-problem.ts";
import type { LedgerProblem } from "#core/ledger/write.ts";

/** All the digits that were typed, since a rounded value may stand on the other side of its limit. */
const exact = new Intl.NumberFormat(formatTag(), { maximumSignificantDigits: 15, useGrouping: false });

/** One sentence for a person, without the address of the subject, which means nothing to anybody. */
export function recordProblemText(problem: LedgerProblem): string {
  switch (problem.type) {
    case "bad envelope":
    case "bad value":
      return words.sentence(problem.fields.map(fieldProblemText).join("; "));
    case "misfit":
      return words.sentence(problem.sentence);
    case "not plain":
      return words.notPlain;
    case "too large":
      return words.tooLarge(problem.bytes, problem.allowedBytes);
    case "other version":
      return words.otherVersion;
    case "unknown kind":
      return words.unknownKind(problem.kind);
    case "wrong document":
      return words.wrongDocument(problem.document);
    case "conflicting":
      return words.conflicting;
    case "bad key":
      return words.badKey(problem.key, problem.kind);
    case "unknown record":
      return words.unknownRecord;
    case "no single previous value":
      return words.noSinglePrevious;
    case "previous value not here":
      return words.previousNotHere;
    case "nothing to void":
      return words.nothingToVoid;
    case "subject twice":
      return words.twice;
  }
}

function fieldProblemText({ path, problem }: FieldProblem): string {
  const fault = fieldFaultText(problem);
  return path === "" ? words.wholeValue(fault) : words.field(path, fault);
}

/** What is wrong with a field, to go on after its name. A schema's own message stays in its words. */
export function fieldFaultText(fault: FieldFault): string {
  const { faults } = words;
  switch (fault.type) {
    case "own words":
      return fault.sentence;
    case "missing":
      return fault.allowed ? faults.missingOf(listOf(fault.allowed)) : faults.missing;
    case "wrong type":
      return faults.wrongType(shown(fault.given), typeName(fault.expected));
    case "not one of":
      return faults.notOneOf(shown(fault.given), listOf(fault.allowed));
    case "too many":
      return faults.tooMany[fault.of](fault.most);
    case "too few":
      return faults.tooFew[fault.of](fault.least);
    case "out of range": {
      const texts = fault.exclusive ? faults.notWithin : faults.beyond;
      return texts[fault.side](shown(fault.given, fault.unit), shown(fault.limit, fault.unit));
    }
    case "outside":
      return faults.outside(quantity(fault.given), quantity(fault.minimum), quantity(fault.maximum));
    case "not a multiple":
      return faults.notMultiple(shown(fault.given, fault.unit), shown(fault.step, fault.unit));
    case "wrong form":
      return faults.wrongForm(shown(fault.given));
    case "unknown fields":
      return faults.unknownFields(fault.names.join(", "));
    case "no allowed form":
      return faults.noAllowedForm(shown(fault.given));
    case "bad entry":
      return faults.badEntry;
    case "not allowed":
      return faults.notAllowed(shown(fault.given, fault.unit));
  }
}

/** As it was typed: what was wrong with it may be its unit. */
function quantity({ value, unit }: Quantity): string {
  return shown(value, unit);
}

function typeName(expected: string): string {
  const names: Readonly<Record<string, string>> = words.types;
  return names[expected] ?? expected;
}

function listOf(allowed: readonly Given[]): string {
  return allowed.map((value) => shown(value)).join(", ");
}

function shown(given: Given, unit?: string): string {
  const text =
    given === undefined
      ? words.given
      : typeof given === "string"
        ? words.quoted(given)
        : typeof given === "number"
          ? exact.format(given)
          : String(given);
  return unit === undefined ? text : `${text} ${unit}`;
}
