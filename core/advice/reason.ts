/** Why a value is what it is: one line each, with where the knowledge comes from. */
import type { TypedQuantity } from "#core/quantity/unit.ts";

export const provenances = ["own baseline", "blend of own baselines", "common practice", "physics"] as const;
export type Provenance = (typeof provenances)[number];

export interface Reason {
  /** The rule or correction that speaks; stable, for records and tests. */
  readonly rule: string;
  /** One sentence for a person. */
  readonly sentence: string;
  readonly provenance: Provenance;
  /** What it adds to the value, in the adjuster's unit; absent for the starting value. */
  readonly change?: TypedQuantity;
  /** Set when a limit stopped it: then it changed nothing, and this says which limit. */
  readonly refused?: string;
}
