import * as z from "zod/mini";
import { nearestCommonAncestors } from "./common-base.ts";
import { mergeFields } from "./field-merge.ts";
import type { RecordKind } from "./kind.ts";
import { examineJson } from "./plain-json.ts";
import type { LedgerRecord } from "./record.ts";

/** What is known of one subject now. */
export type Current<Value = unknown> =
  /** Never written, or withdrawn: then `voided` is the record that withdrew it. */
  | { readonly state: "absent"; readonly voided?: LedgerRecord<Value> }
  | { readonly state: "settled"; readonly value: Value; readonly heads: readonly LedgerRecord<Value>[] }
  | {
      readonly state: "disputed";
      /** The heads, one or more for each different value, sorted by id. */
      readonly claims: readonly LedgerRecord<Value>[];
      /** For kinds that merge by fields: the fields in dispute with the records that disagree. */
      readonly fields?: Readonly<Record<string, readonly LedgerRecord<Value>[]>>;
      /** For kinds that merge by fields: what is agreed, disputed fields as in the common base. */
      readonly value?: Value;
      readonly heads: readonly LedgerRecord<Value>[];
    };

/** The value of a settled subject; undefined when it is absent or disputed. */
export function settledValue<Value>(current: Current<Value>): Value | undefined {
  return current.state === "settled" ? current.value : undefined;
}

/**
 * Judges the heads of one subject (rules M2, M3 and M4).
 * @param heads sorted by id
 * @param records all records of the subject, in which a common base is sought
 */
export function judgeHeads<Value>(
  kind: RecordKind<Value>,
  heads: readonly LedgerRecord<Value>[],
  records: ReadonlyMap<string, LedgerRecord<Value>>,
): Current<Value> {
  return judge(kind, heads, records, 0);
}

type Claim<Value> = LedgerRecord<Value> & { readonly value: Value };

// Past this many merges of merges, or heads, the base counts as unknown, which shows more disputes and hides none. Nobody
// but a hostile writer makes so many heads, and looking for what they have in common takes time and room for each.
const deepestBase = 8;
const mostHeads = 64;

function judge<Value>(
  kind: RecordKind<Value>,
  heads: readonly LedgerRecord<Value>[],
  records: ReadonlyMap<string, LedgerRecord<Value>>,
  depth: number,
): Current<Value> {
  const voids = heads.filter(({ voided }) => voided !== undefined);
  const claims = heads.filter((head): head is Claim<Value> => head.voided === undefined);
  const [first, ...others] = claims;
  if (first === undefined) {
    const [voided] = voids;
    return voided === undefined ? { state: "absent" } : { state: "absent", voided };
  }
  const fact = factText(kind, first);
  const same = others.every((claim) => factText(kind, claim) === fact);
  if (voids.length === 0 && same) return { state: "settled", value: first.value, heads };
  if (kind.merge === "whole") return { state: "disputed", claims: heads, heads };
  const { value, fields } = mergeClaims(kind, same ? [first] : claims, records, depth);
  if (voids.length === 0 && value !== undefined && fields === undefined) return { state: "settled", value, heads };
  return {
    state: "disputed",
    claims: heads,
    ...(fields === undefined ? {} : { fields }),
    ...(value === undefined ? {} : { value }),
    heads,
  };
}

function factText<Value>(kind: RecordKind<Value>, claim: Claim<Value>): string {
  return examineJson(kind.fact === undefined ? claim.value : kind.fact(claim.value)).text;
}

function mergeClaims<Value>(
  kind: RecordKind<Value>,
  claims: readonly Claim<Value>[],
  records: ReadonlyMap<string, LedgerRecord<Value>>,
  depth: number,
): { value?: Value; fields?: Readonly<Record<string, readonly LedgerRecord<Value>[]>> } {
  const [only, ...others] = claims;
  if (only !== undefined && others.length === 0) return { value: only.value };
  const merged = mergeFields(claims, baseOf(kind, claims, records, depth));
  if (merged === undefined) return {};
  const fields = merged.fields as Readonly<Record<string, readonly LedgerRecord<Value>[]>>;
  const parsed = z.safeParse(kind.schema, merged.value);
  return {
    ...(Object.keys(fields).length === 0 ? {} : { fields }),
    ...(parsed.success ? { value: parsed.data } : {}),
  };
}

/** What the claims started from: their nearest common ancestor, or what several of them say together. */
function baseOf<Value>(
  kind: RecordKind<Value>,
  claims: readonly Claim<Value>[],
  records: ReadonlyMap<string, LedgerRecord<Value>>,
  depth: number,
): Value | undefined {
  if (depth >= deepestBase || claims.length > mostHeads) return undefined;
  return settledValue(judge(kind, nearestCommonAncestors(claims, records), records, depth + 1));
}
