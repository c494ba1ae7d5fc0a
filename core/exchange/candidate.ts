/** What a file would write, before anything has judged it. */
import type { RecordKind } from "#core/ledger/kind.ts";
import type { FilePlace } from "./file-place.ts";
import type { FileProblem } from "./file-problem.ts";
import type { RowRefusal } from "./row-refusal.ts";

/** One value that a file brings. */
export interface Candidate {
  readonly place: FilePlace;
  readonly kind: RecordKind;
  readonly key: string;
  readonly value: unknown;
}

/** A row or value that cannot be taken in. */
export interface Refused {
  readonly place: FilePlace;
  readonly refusal: RowRefusal;
}

/** What was read from a file: the candidates, and what could not become one. */
export interface Candidates {
  readonly candidates: readonly Candidate[];
  readonly refused: readonly Refused[];
}

export type ReadCandidates =
  | ({ readonly ok: true } & Candidates)
  | { readonly ok: false; readonly problem: FileProblem };
