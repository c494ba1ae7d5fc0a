/**
 * All current values of a team as one JSON file: by kind, then by key, each in the shape of its record. The file of a
 * scenario is not that: it has no runs, settings or services, and nests baselines under riders. How to write such a file
 * is in client/docs/data-format.md.
 */
import * as z from "zod/mini";
import type { Ledger } from "#core/ledger/ledger.ts";
import { allKinds } from "#core/planning/all-kinds.ts";

export const teamDataFormat = "pitslate team data";
export const teamDataVersion = 1;

/** One of several values that people stand by; `voided` in place of a value: somebody took the subject back. */
const claimSchema = z.object({
  value: z.optional(z.unknown()),
  voided: z.optional(z.string()),
  by: z.string(),
  at: z.string(),
});

const valuesByKind = Object.fromEntries(
  allKinds.map(({ kind, schema }) => [kind, z.optional(z.record(z.string(), schema as z.ZodMiniType))]),
);
const claimsByKind = Object.fromEntries(
  allKinds.map(({ kind }) => [kind, z.optional(z.record(z.string(), z.array(claimSchema)))]),
);

/** The whole file. It serves the documentation and its test; reading judges each value alone, so that one bad value refuses itself only. */
const teamDataSchema = z.object({
  $schema: z.optional(z.string()),
  format: z.literal(teamDataFormat),
  version: z.literal(teamDataVersion),
  date: z.optional(z.string()),
  values: z.strictObject(valuesByKind),
  disputed: z.optional(z.strictObject(claimsByKind)),
});

/** The file's JSON Schema (draft 2020-12). What only a refinement sees, such as ranges by unit, is not in it. */
export function teamDataJsonSchema(): unknown {
  return {
    title: "Pitslate team data, version 1",
    ...z.toJSONSchema(teamDataSchema, {
      io: "input",
      reused: "ref",
      // A wall-clock time without a zone is no date-time of JSON Schema: its pattern says it all.
      override: ({ jsonSchema }) => {
        if (jsonSchema.pattern !== undefined) delete jsonSchema.format;
      },
    }),
  };
}

/**
 * The team's data now. Settled values can be taken in again; what is in dispute stands with all its claims, for reading.
 * @param date the moment of writing, ISO 8601 in UTC
 */
export function teamData(ledger: Ledger, date: string) {
  const values: [string, unknown][] = [];
  const disputed: [string, unknown][] = [];
  for (const kind of allKinds) {
    const settledHere: [string, unknown][] = [];
    const disputedHere: [string, unknown][] = [];
    for (const key of ledger.keys(kind)) {
      const current = ledger.current<unknown>(kind, key);
      if (current.state === "settled") settledHere.push([key, current.value]);
      if (current.state !== "disputed") continue;
      const claims = current.claims.map(({ value, voided, by, at }) =>
        voided === undefined ? { value, by, at } : { voided: voided.reason, by, at },
      );
      disputedHere.push([key, claims]);
    }
    if (settledHere.length > 0) values.push([kind.kind, Object.fromEntries(settledHere)]);
    if (disputedHere.length > 0) disputed.push([kind.kind, Object.fromEntries(disputedHere)]);
  }
  return {
    format: teamDataFormat,
    version: teamDataVersion,
    date,
    values: Object.fromEntries(values),
    ...(disputed.length > 0 && { disputed: Object.fromEntries(disputed) }),
  };
}
