/** What another device lacks of what is here. */
import * as Y from "yjs";
import { bytesEqual } from "#client/device/bytes-equal.ts";
import type { DocumentReplica } from "#client/device/document-replica.ts";
import type { NamedUpdate } from "#client/device/hand-off/bundle.ts";
import type { Clocks } from "#core/ledger/content-digest.ts";
import { parseDocumentName } from "#core/ledger/documents.ts";
import { digestBytes, type HeldDocument, type Holdings } from "./holdings.ts";

export interface AnswerRefusal {
  readonly ok: false;
  readonly problem: {
    /** "differs": both hold entries under the same numbers that are not the same. */
    readonly type: "damaged" | "another team" | "nothing here" | "nothing new" | "differs";
  };
}

export type HoldingsComparison =
  | { readonly ok: true; readonly entries: number; readonly documents: readonly NamedUpdate[] }
  | AnswerRefusal;

/** The updates and the number of entries by which the other device would know all that it wants of this one, or why not. */
export function compareHoldings(replicas: readonly DocumentReplica[], theirs: Holdings): HoldingsComparison {
  const team = replicas.find(({ name }) => name === "team");
  const teamClocks: Clocks = team ? clocksOf(team) : new Map();
  if (teamClocks.size === 0) {
    return refuseAnswer("nothing here");
  }
  if (isOfAnotherTeam(teamClocks, theirs)) {
    return refuseAnswer("another team");
  }
  if (replicas.some((replica) => differs(replica, theirs.documents.get(replica.name)))) {
    return refuseAnswer("differs");
  }
  const lacking = replicas.flatMap((replica) => {
    const known = theirs.documents.get(replica.name)?.clocks;
    if (known === undefined && !isWanted(replica.name, theirs.riders)) return [];
    const entries = entriesBeyond(clocksOf(replica), known ?? new Map());
    return entries === 0 ? [] : [{ replica, entries, known: Y.encodeStateVector(new Map(known)) }];
  });
  if (lacking.length === 0) {
    return refuseAnswer("nothing new");
  }
  return {
    ok: true,
    entries: lacking.reduce((sum, { entries }) => sum + entries, 0),
    documents: lacking.map(({ replica, known }) => ({ name: replica.name, update: replica.state(known) })),
  };
}

/** What this device has of a document, as it tells another one. */
export function heldHere(replica: DocumentReplica): {
  readonly name: string;
  readonly vector: Uint8Array;
  readonly digest: Uint8Array;
} {
  const digest = replica.digestAt(clocksOf(replica));
  if (digest === undefined) throw new Error(`The document ${replica.name} does not hold what its own clocks say.`);
  return { name: replica.name, vector: replica.vector(), digest };
}

export function refuseAnswer(type: AnswerRefusal["problem"]["type"]): AnswerRefusal {
  return { ok: false, problem: { type } };
}

function clocksOf(replica: DocumentReplica): Clocks {
  return Y.decodeStateVector(replica.vector());
}

/** Both have a team, and no writer's entries in common. */
function isOfAnotherTeam(own: Clocks, { documents }: Holdings): boolean {
  const theirs: Clocks = documents.get("team")?.clocks ?? new Map();
  return theirs.size > 0 && ![...own.keys()].some((client) => theirs.has(client));
}

/** What the other device has is here as well, under the same numbers, and is something else. */
function differs(replica: DocumentReplica, theirs: HeldDocument | undefined): boolean {
  if (theirs === undefined) return false;
  const own = replica.digestAt(theirs.clocks);
  return own !== undefined && !bytesEqual(own.subarray(0, digestBytes), theirs.digest);
}

function isWanted(name: string, riders: Holdings["riders"]): boolean {
  const scope = parseDocumentName(name);
  return scope?.scope === "team" || (scope !== undefined && (riders === "all" || riders.includes(scope.rider)));
}

function entriesBeyond(own: Clocks, theirs: Clocks): number {
  let count = 0;
  for (const [client, clock] of own) count += Math.max(0, clock - (theirs.get(client) ?? 0));
  return count;
}
