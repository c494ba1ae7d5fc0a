/** English texts of why something cannot be written down. */
export const recordProblems = {
  /** Makes one sentence of what is wrong. */
  sentence: (text: string) => `${text.charAt(0).toUpperCase()}${text.slice(1)}.`,
  field: (name: string, fault: string) => `${name}: ${fault}`,
  wholeValue: (fault: string) => `The value ${fault}`,
  quoted: (text: string) => `"${text}"`,
  /** In place of a list or an object. */
  given: "what was given",
  types: {
    int: "a whole number",
    number: "a number",
    string: "a text",
    array: "a list",
    object: "an object",
    boolean: "yes or no",
  },
  faults: {
    missing: "is missing",
    missingOf: (allowed: string) => `is missing; allowed: ${allowed}`,
    wrongType: (given: string, expected: string) => `${given} is not ${expected}`,
    notOneOf: (given: string, allowed: string) => `${given} is not one of ${allowed}`,
    tooMany: {
      characters: (most: number) => `has more than the allowed ${most} characters`,
      entries: (most: number) => `has more than the allowed ${most} entries`,
    },
    tooFew: {
      characters: (least: number) => `needs at least ${least === 1 ? "1 character" : `${least} characters`}`,
      entries: (least: number) => `needs at least ${least === 1 ? "1 entry" : `${least} entries`}`,
    },
    /** Past a limit that is allowed itself. */
    beyond: {
      above: (given: string, limit: string) => `${given} is above the allowed ${limit}`,
      below: (given: string, limit: string) => `${given} is below the allowed ${limit}`,
    },
    /** On a limit that is not allowed itself, or past it. */
    notWithin: {
      above: (given: string, limit: string) => `${given} is not below ${limit}`,
      below: (given: string, limit: string) => `${given} is not above ${limit}`,
    },
    outside: (given: string, minimum: string, maximum: string) => `${given} is outside ${minimum} to ${maximum}`,
    notMultiple: (given: string, step: string) => `${given} is not a multiple of ${step}`,
    wrongForm: (given: string) => `${given} is not in the form that is allowed here`,
    unknownFields: (names: string) => `has fields that are not allowed: ${names}`,
    noAllowedForm: (given: string) => `${given} is none of the allowed forms`,
    badEntry: "has an entry that is not allowed",
    notAllowed: (given: string) => `${given} is not allowed`,
  },
  notPlain: "It holds something that cannot be kept; allowed are texts, numbers, yes or no, lists and objects.",
  tooLarge: (bytes: number, allowed: number) => `It takes ${bytes} bytes; at most ${allowed} are allowed.`,
  otherVersion: "It was written by another version of Pitslate.",
  unknownKind: (kind: string) => `This version of Pitslate does not know entries of the kind "${kind}".`,
  wrongDocument: (document: string) => `It does not belong in the document "${document}".`,
  conflicting: "The same entry exists with different contents; none of them is used, so enter the value again.",
  badKey: (key: string, kind: string) =>
    `"${key}" cannot name a ${kind}; allowed are 1 to 200 letters, digits and . _ ~ / -`,
  unknownRecord: "That entry is not on this device, or cannot be read.",
  noSinglePrevious: "There was no single value before that entry; choose the value by hand.",
  previousNotHere: "The value before that entry is not on this device, or cannot be read; choose the value by hand.",
  nothingToVoid: "There is no value that could be withdrawn.",
  twice: "The same value is given twice in one entry; each may be given once.",
} as const;
