import * as z from "zod/mini";
import { type Cause, causeSchema, recordIdSchema, shortTextSchema } from "./cause.ts";
import { fieldProblemOf, unworded } from "./field-problem.ts";
import { examineJson, isJsonObject, utf8Length } from "./plain-json.ts";
import type { LedgerProblem } from "./problem.ts";

/** What a record writes: its kind and the key within the kind, `kind:key`. */
export type Subject = `${string}:${string}`;

/** One immutable entry of the ledger. It carries exactly one of `value` and `voided`. */
export type LedgerRecord<Value = unknown> = {
  readonly version: 1;
  /** ULID. */
  readonly id: string;
  readonly subject: Subject;
  readonly value?: Value;
  /** Withdraws the subject; the reason is for people. */
  readonly voided?: { readonly reason: string };
  /** Ids of the records of this subject that the writer had in view. */
  readonly supersedes: readonly string[];
  /** Id of the member who wrote it. */
  readonly by: string;
  /** Id of the device it was written on. */
  readonly device: string;
  /** ISO 8601, UTC, by the writer's clock; informative, decides nothing. */
  readonly at: string;
  /** Ties records that were made together. */
  readonly batch?: string;
  readonly cause?: Cause;
};

/** Largest record, bytes as JSON in UTF-8. */
export const allowedRecordBytes = 16 * 1024;

/** Schema of the envelope; strict about what it knows, and keeps fields it does not know. */
export const recordSchema = z
  .looseObject({
    version: z.literal(1),
    id: recordIdSchema,
    subject: z
      .string()
      .check(z.regex(/^[A-Za-z][A-Za-z0-9-]{0,63}:[A-Za-z0-9._~/-]{1,200}$/, "is not of the form kind:key")),
    value: z.exactOptional(z.unknown()),
    voided: z.exactOptional(z.looseObject({ reason: z.string().check(z.minLength(1), z.maxLength(500)) })),
    supersedes: z.array(recordIdSchema),
    by: shortTextSchema,
    device: shortTextSchema,
    at: z.iso.datetime(),
    batch: z.exactOptional(shortTextSchema),
    cause: z.exactOptional(causeSchema),
  })
  .check(
    z.refine((record) => Object.hasOwn(record, "value") !== Object.hasOwn(record, "voided"), {
      error: "must carry exactly one of value and voided",
      abort: true,
    }),
  );

/** The outcome of reading an envelope. */
export type ParsedRecord =
  | { readonly ok: true; readonly record: LedgerRecord }
  | { readonly ok: false; readonly problem: LedgerProblem };

/** Reads the envelope of a record; the value is left as it came, for its kind to judge. */
export function parseRecord(raw: unknown): ParsedRecord {
  const { text, problem } = examineJson(raw);
  if (problem !== undefined) return { ok: false, problem: { type: "not plain", ...problem } };
  // No UTF-16 unit takes more than 3 bytes, so that most records need no counting.
  const bytes = text.length * 3 <= allowedRecordBytes ? 0 : utf8Length(text);
  if (bytes > allowedRecordBytes) {
    return { ok: false, problem: { type: "too large", bytes, allowedBytes: allowedRecordBytes } };
  }
  if (isJsonObject(raw) && typeof raw.version === "number" && raw.version !== 1) {
    return { ok: false, problem: { type: "other version", version: raw.version } };
  }
  const parsed = z.safeParse(recordSchema, raw, { error: () => unworded });
  if (parsed.success) return { ok: true, record: parsed.data as LedgerRecord };
  return {
    ok: false,
    problem: { type: "bad envelope", fields: parsed.error.issues.map((issue) => fieldProblemOf(issue, raw)) },
  };
}

/** Joins a kind and a key. Whether the key is allowed is for the record's schema to say. */
export function subjectOf(kind: string, key: string): Subject {
  return `${kind}:${key}`;
}

/** Splits a subject at its first colon, which no kind contains. Throws when there is none. */
export function splitSubject(subject: string): { readonly kind: string; readonly key: string } {
  const colon = subject.indexOf(":");
  if (colon < 0) throw new Error(`"${subject}" is not a subject.`);
  return { kind: subject.slice(0, colon), key: subject.slice(colon + 1) };
}

/** True for a key that a subject may have: 1 to 200 of `A-Z a-z 0-9 . _ ~ / -`. */
export function isRecordKey(key: string): boolean {
  return /^[A-Za-z0-9._~/-]{1,200}$/.test(key);
}
