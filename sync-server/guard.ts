import type * as Y from "yjs";

/** Why an update is not taken: a word for programs and one sentence for a screen. */
export type GuardProblem = { readonly type: string; readonly sentence: string };

/** `isNew` says that the document holds nothing of the update yet, so that it can be kept as it came. */
export type GuardResult =
  | { readonly ok: true; readonly isNew?: boolean }
  | { readonly ok: false; readonly problem: GuardProblem };

/** The type of the problem that something before the update is missing; it may be good once that is here. */
export const gapProblem = "gap";

/**
 * Judges an update before it touches the document. It changes nothing, never throws, costs little for hostile bytes,
 * and what it lets through applies at once and as a whole.
 * @param maximumBytes the most that this update may have.
 */
export type Guard = (update: Uint8Array, document: Y.Doc, maximumBytes: number) => GuardResult;
