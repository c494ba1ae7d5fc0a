/**
 * Where a value that somebody wrote came from, when it was not his own choice: from another bike, or with a part that was
 * moved. It stands inside the cause "by hand": causes are a closed list, which a device of an older version would not read
 * with a new entry in it, but it keeps and passes on a field of a cause that it does not know.
 */
import * as z from "zod/mini";
import { type Cause, recordIdSchema } from "#core/ledger/cause.ts";
import { identifierSchema } from "./identifier.ts";

const provenanceSchema = z.discriminatedUnion("type", [
  /** Copied from the same adjuster of `bike`, where `record` says so. */
  z.object({ type: z.literal("copy"), bike: identifierSchema, record: recordIdSchema }),
  /** `part` was moved, which brought the value along or took it away; `bike` is where the part was before. */
  z.object({ type: z.literal("part moved"), part: identifierSchema, bike: z.optional(identifierSchema) }),
]);
export type Provenance = z.infer<typeof provenanceSchema>;

/** The cause of a record that was written for this reason. */
export function causeOfProvenance(provenance: Provenance): Cause {
  const cause = { type: "by hand", provenance } as const;
  return cause;
}

/** Where a record's value came from; undefined where its cause says nothing, or nothing that can be read. */
export function provenanceOf(cause: Cause | undefined): Provenance | undefined {
  if (cause?.type !== "by hand" || !("provenance" in cause)) return undefined;
  const read = z.safeParse(provenanceSchema, cause.provenance);
  return read.success ? read.data : undefined;
}
