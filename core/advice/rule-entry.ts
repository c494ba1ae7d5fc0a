/** One rule in words, as the rule book shows it. */
import type { Provenance } from "./reason.ts";

export interface RuleEntry {
  readonly id: string;
  /** When it speaks: one phrase. */
  readonly when: string;
  /** What it does, in order of preference; one phrase each. Empty where there is nothing to set. */
  readonly moves: readonly string[];
  readonly reason: string;
  readonly notice?: string;
  readonly otherwise?: string;
  readonly provenance: Provenance;
}
