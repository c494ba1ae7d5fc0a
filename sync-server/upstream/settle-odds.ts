import * as Y from "yjs";
import { createContentDigest } from "#core/ledger/content-digest.ts";
import { differingEntries } from "#core/ledger/differing-entries.ts";
import { recordsName } from "#core/ledger/document.ts";
import type { DurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { maximumCatchUpBytes } from "#core/protocol/limits.ts";
import type { Guard } from "../guard.ts";

/** What one server holds of a document, with its acknowledgement of just that. */
export type Holding = { readonly acknowledgement: DurableAcknowledgement; readonly whole: Uint8Array };

/**
 * Two servers that hold different entries under equal clocks, because a client number was used twice: each thinks that
 * the other has everything. Both have to take the same update: what either lacks, under a fresh client number.
 * @param random from 0 to below 1
 * @returns undefined when there is nothing to add, or a whole document is not what its server acknowledged.
 */
export function settleOdds(ours: Holding, theirs: Holding, guard: Guard, random: () => number): Uint8Array | undefined {
  const here = documentOf(ours, guard);
  const there = documentOf(theirs, guard);
  const missing = here === undefined || there === undefined ? [] : differingEntries(here, there);
  here?.destroy();
  there?.destroy();
  if (missing.length === 0) return undefined;
  const addition = new Y.Doc();
  addition.clientID = 1 + Math.floor(random() * 0xffff_fffe);
  addition.getArray(recordsName).push([...missing]);
  const update = Y.encodeStateAsUpdate(addition);
  addition.destroy();
  return update;
}

/** The document, when the bytes are harmless and hold what was acknowledged. */
function documentOf({ whole, acknowledgement }: Holding, guard: Guard): Y.Doc | undefined {
  const document = new Y.Doc({ gc: false });
  if (!guard(whole, document, maximumCatchUpBytes).ok) return undefined;
  Y.applyUpdate(document, whole);
  const content = createContentDigest(document).at(acknowledgement.stateVector);
  if (content?.every((byte, at) => byte === acknowledgement.digest?.[at])) return document;
  document.destroy();
  return undefined;
}
