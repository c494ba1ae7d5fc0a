/** What a file would write, before anything has judged it. */
import type { RecordKind } from "#core/ledger/kind.ts";

/** One value that a file brings. `place` is where it stands there, in words: `rider "alder"`, `Line 7`. */
export interface Candidate {
  readonly place: string;
  readonly kind: RecordKind;
  readonly key: string;
  readonly value: unknown;
}

/** A row or value that cannot be taken in. `sentence` says why and what is allowed. */
export interface Refused {
  readonly place: string;
  readonly sentence: string;
}

/** What was read from a file: the candidates, and what could not become one. */
export interface Candidates {
  readonly candidates: readonly Candidate[];
  readonly refused: readonly Refused[];
}

export type ReadCandidates =
  | ({ readonly ok: true } & Candidates)
  | { readonly ok: false; readonly problem: { readonly type: string; readonly sentence: string } };
