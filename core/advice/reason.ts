/** Why a value is what it is: one line each, with where the knowledge comes from. The words are in `reason-in-words.ts`. */
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { CourseType } from "#core/team/course-type.ts";
import type { LimitProblem } from "./limits.ts";

export const provenances = ["own baseline", "blend of own baselines", "common practice", "physics"] as const;
export type Provenance = (typeof provenances)[number];

/** What a baseline of the rider adds to a blend; `percent` is its part of it, whole. */
export interface BlendPart {
  readonly courseType: CourseType;
  readonly percent: number;
  readonly value: TypedQuantity;
}

/** The facts of a reason. */
export type Because =
  /** Taken from the rider's own baseline for one type of course. */
  | { readonly type: "own baseline"; readonly courseType: CourseType; readonly value: TypedQuantity }
  | { readonly type: "blend"; readonly parts: readonly BlendPart[] }
  /** A condition rule; `percent` (whole, below 100) when it counts for a part of the blend only. */
  | { readonly type: "condition rule"; readonly rule: string; readonly percent?: number }
  | { readonly type: "rider mass"; readonly now: TypedQuantity; readonly atBaseline: TypedQuantity }
  | { readonly type: "altitude"; readonly now: TypedQuantity; readonly atBaseline: TypedQuantity }
  | { readonly type: "rebound follows"; readonly spring: "softer" | "stiffer" }
  /** Set at the bench's temperature so that it reads `value` at the course's. */
  | {
      readonly type: "temperature";
      readonly bench: TypedQuantity;
      readonly course: TypedQuantity;
      readonly value: TypedQuantity;
    };

export interface Reason {
  /** The rule or correction that speaks; stable, for records and tests. */
  readonly rule: string;
  readonly because: Because;
  readonly provenance: Provenance;
  /** What it adds to the value, in the adjuster's unit; absent for the starting value. */
  readonly change?: TypedQuantity;
  /** The limit that stopped it: then it changed nothing. */
  readonly refused?: LimitProblem;
}
