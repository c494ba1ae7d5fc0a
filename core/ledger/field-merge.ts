import { examineJson, isJsonObject } from "./plain-json.ts";
import type { LedgerRecord } from "./record.ts";

/** Several values of one subject brought together field by field. */
export type FieldMerge = {
  /** Agreed fields; a disputed field keeps the value of the base, and is left out where there is none. */
  readonly value: Readonly<Record<string, unknown>>;
  /** The fields in dispute, each with the heads that disagree about it, sorted as the heads are. */
  readonly fields: Readonly<Record<string, readonly LedgerRecord[]>>;
};

/**
 * Three-way merge of the top-level fields of several heads with their common
 * base (rule M4): a field that some heads changed, all to one value, takes it;
 * changed to different values it is disputed. Without a base every field that
 * differs is disputed. Undefined when a value has no fields.
 * @param base the value that all heads started from; undefined when there is none
 */
export function mergeFields(heads: readonly LedgerRecord[], base: unknown): FieldMerge | undefined {
  const values = heads.map(({ value }) => value);
  if (!values.every(isJsonObject)) return undefined;
  const baseValue = isJsonObject(base) ? base : undefined;
  const names = new Set([...values, ...(baseValue === undefined ? [] : [baseValue])].flatMap(Object.keys));
  const value: Record<string, unknown> = {};
  const fields: Record<string, readonly LedgerRecord[]> = {};
  for (const name of [...names].sort()) {
    const baseText = baseValue === undefined ? undefined : fieldText(baseValue, name);
    const claims = heads
      .map((head) => ({ head, text: fieldText(head.value, name) }))
      .filter(({ text }) => text !== baseText);
    const agreed = new Set(claims.map(({ text }) => text)).size === 1;
    if (claims.length > 0 && !agreed) fields[name] = claims.map(({ head }) => head);
    const source = agreed ? claims[0]?.head.value : baseValue;
    if (isJsonObject(source) && Object.hasOwn(source, name)) value[name] = source[name];
  }
  return { value, fields };
}

// No JSON text is empty, so a field that is not there differs from every one that is.
function fieldText(value: unknown, name: string): string {
  return isJsonObject(value) && Object.hasOwn(value, name) ? examineJson(value[name]).text : "";
}
