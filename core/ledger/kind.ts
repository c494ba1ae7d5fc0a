import type * as z from "zod/mini";

/** One kind of record: where it lives, what its value may be, and how concurrent values meet. */
export type RecordKind<Value = unknown> = {
  /** First part of the subject: a letter, then letters, digits and hyphens. */
  readonly kind: string;
  /** `team` kinds live in the team's document; `rider` kinds in a rider's, under keys that begin `<rider>/`. */
  readonly scope: "team" | "rider";
  /** Must accept its own output unchanged: defaults are welcome, transformations are not. */
  readonly schema: z.core.$ZodType<Value>;
  /** `whole`: different values are a dispute. `fields`: top-level fields merge one by one with the common base. */
  readonly merge: "whole" | "fields";
  /**
   * The part of the value that decides whether two values are the same; the
   * whole value when absent. Only for `whole` kinds. A method, so that a kind
   * of one value can stand in a list of kinds.
   */
  fact?(value: Value): unknown;
  /**
   * Why a record cannot stand under `key`: nothing is ever called so, or the value cannot belong to what is (`value` is
   * undefined in a record that voids). A sentence without a full stop, undefined when it can; every key can when absent.
   */
  misfit?(key: string, value: Value | undefined): string | undefined;
};

/** Checks a kind as it is defined; throws on a name that no subject could carry, or on `fact` with `fields`. */
export function defineKind<Value>(definition: RecordKind<Value>): RecordKind<Value> {
  if (!/^[A-Za-z][A-Za-z0-9-]{0,63}$/.test(definition.kind))
    throw new Error(`"${definition.kind}" cannot name a kind.`);
  if (definition.merge === "fields" && definition.fact !== undefined) {
    throw new Error(`The kind "${definition.kind}" merges by fields, which are compared each as a whole.`);
  }
  return definition;
}

/** The kinds that a ledger understands. */
export type KindRegistry = {
  /** The kind of that name, if there is one. */
  find(name: string): RecordKind | undefined;
  /** All kinds, in the order given. */
  readonly kinds: readonly RecordKind[];
};

/** Collects kinds; throws when two have the same name. */
export function createKindRegistry(kinds: readonly RecordKind[]): KindRegistry {
  const byName = new Map<string, RecordKind>();
  for (const kind of kinds) {
    if (byName.has(kind.kind)) throw new Error(`The kind "${kind.kind}" is defined twice.`);
    byName.set(kind.kind, kind);
  }
  return { find: (name) => byName.get(name), kinds: [...kinds] };
}
