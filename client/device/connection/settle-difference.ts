/**
 * Two replicas that hold different entries under the same clocks: one client
 * number was used twice, for example by a device and its restored copy. Each
 * thinks that the other has everything, so neither would ever send.
 *
 * The remedy is to add again, under a fresh client number, what either side
 * lacks. A record that comes twice with the same content is one record (rule M8),
 * so that both sides then hold the same records.
 */
import * as Y from "yjs";
import { bytesEqual } from "#client/device/bytes-equal.ts";
import { localClocks } from "#client/device/local-clocks.ts";
import { createContentDigest } from "#core/ledger/content-digest.ts";
import { differingEntries } from "#core/ledger/differing-entries.ts";
import { recordsName } from "#core/ledger/document.ts";
import type { DurableAcknowledgement } from "#core/protocol/durable-acknowledgement.ts";
import { coversStateVector, type StateVector } from "#core/protocol/state-vector.ts";

/** Times that a whole document is asked for on one socket, and that a difference is settled, before a person is told. */
const MOST_QUESTIONS = 5;
const MOST_SETTLEMENTS = 3;

export interface DifferenceSettler {
  /** The server's content differs from ours below its clocks. @returns what to do now. */
  differs(acknowledgement: DurableAcknowledgement): "ask for everything" | "wait" | "tell";
  /** Looks at an answer of the server before it is applied; settles the difference when it is the whole document. */
  receive(answer: Uint8Array): void;
  socketEnded(): void;
}

/** @param clientId a client number that nobody else uses */
export function createDifferenceSettler(ydoc: Y.Doc, clientId: () => number): DifferenceSettler {
  let asked: DurableAcknowledgement | undefined;
  let questions = 0;
  let settlements = 0;
  /** What was here when the difference was settled: until the server has it, it goes on differing. */
  let settled: StateVector | undefined;
  return {
    differs: (acknowledgement) => {
      if (settled && !coversStateVector(acknowledgement.stateVector, settled)) return "wait";
      if (settlements >= MOST_SETTLEMENTS) return "tell";
      if (questions >= MOST_QUESTIONS) return "wait";
      questions += 1;
      asked = acknowledgement;
      return "ask for everything";
    },
    receive: (answer) => {
      if (!asked) return;
      const theirs = new Y.Doc();
      Y.applyUpdate(theirs, answer);
      const content = createContentDigest(theirs).at(asked.stateVector);
      if (content && asked.digest && bytesEqual(content, asked.digest)) {
        asked = undefined;
        settlements += 1;
        addWhatIsMissing(ydoc, theirs, clientId());
        settled = localClocks(ydoc);
      }
      theirs.destroy();
    },
    socketEnded: () => {
      asked = undefined;
      questions = 0;
    },
  };
}

function addWhatIsMissing(ydoc: Y.Doc, theirs: Y.Doc, clientId: number): void {
  const missing = differingEntries(ydoc, theirs);
  if (missing.length === 0) return;
  // The number in use may be the one that was used twice.
  ydoc.clientID = clientId;
  ydoc.getArray(recordsName).push([...missing]);
}
