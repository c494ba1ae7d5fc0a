/**
 * A rule of advice on a run's feedback, as data. The engine (adjustments.ts)
 * knows no rule by name: to add one, add it to a file in feedback-rules/.
 */
import type { AdjusterKind } from "#core/team/adjuster.ts";
import type { End } from "#core/team/place.ts";
import type { Symptom } from "./symptom.ts";

/** Raise or lower a pressure, rate, preload or number of spacers; open or close a damper. */
export const directions = ["raise", "lower", "open", "close"] as const;
export type Direction = (typeof directions)[number];

/**
 * - "sag to target": the value that brings the measured sag to its target.
 * - "hit within travel": the value with which the hit that used all travel stays just within it.
 * - "hit uses travel": the value with which the hit that was measured uses the travel it should.
 * - "balance as before": the value that brings the front-to-rear ratio of natural frequencies back to the baseline's.
 * - "felt": the smallest change that can be felt.
 */
export const sizings = ["sag to target", "hit within travel", "hit uses travel", "balance as before", "felt"] as const;
export type Sizing = (typeof sizings)[number];

export interface Move {
  readonly at: "suspension" | "tyre";
  /** The end that the symptoms are of, or the other one. */
  readonly end?: "other";
  readonly adjuster: AdjusterKind;
  readonly direction: Direction;
  readonly size: Sizing;
}

/**
 * The trade's order: what wears or breaks the bike before anything else; sag before everything later in the stroke; the
 * damper after the spring; grip when the stroke is right; the balance of the two ends last.
 */
export const stages = ["damage", "sag", "travel", "spring feel", "damping", "grip", "balance"] as const;
export type Stage = (typeof stages)[number];

export interface FeedbackRule {
  readonly id: string;
  readonly stage: Stage;
  /** Ends that it speaks about. */
  readonly ends: readonly End[];
  readonly when: {
    /** All of these. */
    readonly all: readonly Symptom[];
    /** And none of these. */
    readonly none?: readonly Symptom[];
  };
  /**
   * In order of preference: the next one counts when the bike lacks the first, a limit stops it, or it was tried for
   * this and did not help. Without moves there is nothing to tune: `otherwise` says what to do instead.
   */
  readonly moves: readonly Move[];
  /** Rebound follows the spring by the damping ratio. */
  readonly coupled?: "rebound";
  /** Why, in one sentence. */
  readonly reason: string;
  /** What the rider should notice on the next run. */
  readonly notice: string;
  /** What to do when it does not help. */
  readonly otherwise: string;
  readonly provenance: "common practice" | "physics";
}

/** A complaint of symptoms that exclude each other: there is a question to ask, not a change to make. */
export interface ConflictRule {
  readonly id: string;
  readonly ends: readonly End[];
  readonly all: readonly [Symptom, Symptom];
  readonly question: string;
}
