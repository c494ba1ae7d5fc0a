import type * as Y from "yjs";

/** Why an update is not taken: a word for programs and one sentence for a screen. */
export type GuardProblem = { readonly type: string; readonly sentence: string };

export type GuardResult = { readonly ok: true } | { readonly ok: false; readonly problem: GuardProblem };

/**
 * Judges an update before it touches the document. It changes nothing, never throws, and costs little for hostile bytes.
 * @param maximumBytes the most that this update may have.
 */
export type Guard = (update: Uint8Array, document: Y.Doc, maximumBytes: number) => GuardResult;
