/**
 * A known answer: a number that somebody outside this project published or that
 * a named reference gives, and the tolerance within which ours must agree, with
 * the reason of that tolerance.
 */

/** How the expected number was come by. */
export const provenances = [
  "read in a transcription of the source and recomputed",
  "source from memory, number recomputed",
  "computed with the named reference",
  "worked out from the textbook formula",
  "common practice, no source",
] as const;
export type Provenance = (typeof provenances)[number];

/** `absolute` in the unit of the answer, or `relative` as a part of it. */
export type Tolerance = { readonly absolute: number } | { readonly relative: number };

export interface KnownAnswer {
  readonly name: string;
  readonly computed: () => number;
  readonly expected: number;
  readonly tolerance: Tolerance;
  /** Why the tolerance is what it is. */
  readonly because: string;
  readonly source: string;
  readonly provenance: Provenance;
}

/** Rows of one source. */
export interface SourceOf {
  readonly source: string;
  readonly provenance: Provenance;
  readonly tolerance: Tolerance;
  readonly because: string;
}

/** Known answers of one source: each row is a name, our computation and the expected number. */
export function answersOf(
  from: SourceOf,
  rows: readonly (readonly [name: string, computed: () => number, expected: number])[],
): KnownAnswer[] {
  return rows.map(([name, computed, expected]) => ({ name, computed, expected, ...from }));
}

/** How far our answer is from the expected one, and how far it may be, in the unit of the answer. */
export function measure(answer: KnownAnswer): { readonly off: number; readonly allowed: number } {
  const { expected, tolerance } = answer;
  return {
    off: Math.abs(answer.computed() - expected),
    allowed: "absolute" in tolerance ? tolerance.absolute : tolerance.relative * Math.abs(expected),
  };
}

/** For numbers that are exact by definition: only the rounding of floating point is left. */
export const ROUNDING: Pick<SourceOf, "tolerance" | "because"> = {
  tolerance: { relative: 1e-13 },
  because: "exact by definition; a few roundings of floating point are left",
};
