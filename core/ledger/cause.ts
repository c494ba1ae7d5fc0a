import * as z from "zod/mini";

/** Why a record was written. It explains; it decides nothing about what is current. */
export type Cause =
  /** A rule of the advice, answering the feedback of a run. */
  | { readonly type: "advice"; readonly rule: string; readonly run: string }
  /** The rider's own baseline, or a blend of several. */
  | { readonly type: "own baseline"; readonly record?: string; readonly courseTypes: readonly string[] }
  /** The conditions of a session. */
  | { readonly type: "conditions"; readonly session: string }
  /** The rider changed it on the hill. */
  | { readonly type: "own change" }
  /** Somebody chose the value; `run` is the one that it answers, if any. */
  | { readonly type: "by hand"; readonly note?: string; readonly run?: string }
  /** Goes back to what was current before that record. */
  | { readonly type: "revert"; readonly record: string }
  /** Somebody looked at the bike and settled these disputed records. */
  | { readonly type: "resolution"; readonly records: readonly string[] }
  /** Taken over from last season. */
  | { readonly type: "carry-over"; readonly record: string }
  /** Confirms what another reported. */
  | { readonly type: "confirmation"; readonly record: string }
  /** The final setup of a weekend, approved as a baseline. */
  | { readonly type: "approval"; readonly weekend: string }
  /** First entry of data. */
  | { readonly type: "setup" };

/** A ULID: 26 characters of Crockford's base 32, the first at most 7 (github.com/ulid/spec). */
export const recordIdSchema = z.string().check(z.regex(/^[0-7][0-9A-HJKMNP-TV-Z]{25}$/, "is not a record id"));

/** An id or short name as it stands in an envelope: 1 to 200 characters. */
export const shortTextSchema = z.string().check(z.minLength(1), z.maxLength(200));

/** Schema of a {@link Cause}; fields it does not know are kept. */
export const causeSchema: z.ZodMiniType<Cause> = z.discriminatedUnion("type", [
  z.looseObject({ type: z.literal("advice"), rule: shortTextSchema, run: shortTextSchema }),
  z.looseObject({
    type: z.literal("own baseline"),
    record: z.exactOptional(recordIdSchema),
    courseTypes: z.array(shortTextSchema),
  }),
  z.looseObject({ type: z.literal("conditions"), session: shortTextSchema }),
  z.looseObject({ type: z.literal("own change") }),
  z.looseObject({
    type: z.literal("by hand"),
    note: z.exactOptional(z.string().check(z.maxLength(2000))),
    run: z.exactOptional(shortTextSchema),
  }),
  z.looseObject({ type: z.literal("revert"), record: recordIdSchema }),
  z.looseObject({ type: z.literal("resolution"), records: z.array(recordIdSchema) }),
  z.looseObject({ type: z.literal("carry-over"), record: recordIdSchema }),
  z.looseObject({ type: z.literal("confirmation"), record: recordIdSchema }),
  z.looseObject({ type: z.literal("approval"), weekend: shortTextSchema }),
  z.looseObject({ type: z.literal("setup") }),
]);
