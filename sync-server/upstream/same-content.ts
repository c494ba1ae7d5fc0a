import type { DurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { coversStateVector } from "#core/protocol/state-vector.ts";

/**
 * Whether two logs hold the same of a document, by their acknowledgements: the same clocks, and below them the same
 * content. A server before version 3 says nothing of its content: its clocks are all there is.
 */
export function holdTheSame(one: DurableAcknowledgement, other: DurableAcknowledgement): boolean {
  return haveEqualClocks(one, other) && !differInContent(one, other);
}

/** Whether two logs differ although neither lacks anything by its clocks: one client number was used twice. */
export function areAtOdds(one: DurableAcknowledgement, other: DurableAcknowledgement): boolean {
  return haveEqualClocks(one, other) && differInContent(one, other);
}

function haveEqualClocks(one: DurableAcknowledgement, other: DurableAcknowledgement): boolean {
  return coversStateVector(one.stateVector, other.stateVector) && coversStateVector(other.stateVector, one.stateVector);
}

function differInContent({ digest: one }: DurableAcknowledgement, { digest: other }: DurableAcknowledgement): boolean {
  return one !== undefined && other !== undefined && !one.every((byte, at) => byte === other[at]);
}
