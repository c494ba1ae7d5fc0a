/**
 * Hand-off by codes: what this device has, the answer to what another one has, and an answer read as a bundle, which then
 * is described and merged like one that came as a file.
 */
import * as Y from "yjs";
import {
  type Bundle,
  type BundleDocument,
  bundleFormat,
  bundleSchemaVersion,
  bundleVersion,
  refuseBundle,
} from "#client/device/hand-off/bundle.ts";
import { refuseDocument, summarize } from "#client/device/hand-off/check-document.ts";
import { type HandOffContext, inspectHere, whenLoaded } from "#client/device/hand-off/hand-off.ts";
import type { BundleReading } from "#client/device/hand-off/read-bundle.ts";
import { parseDocumentName } from "#core/ledger/documents.ts";
import { type Answer, readAnswer, writeAnswer } from "./answer.ts";
import { sameBytes, sessionOf } from "./code-frame.ts";
import { type Holdings, readHoldings, writeHoldings } from "./holdings.ts";

export type MadeAnswer =
  | {
      readonly ok: true;
      readonly content: Uint8Array /** Entries that the other device lacks. */;
      readonly entries: number;
    }
  | {
      readonly ok: false;
      readonly problem: {
        readonly type: "damaged" | "another team" | "nothing here" | "nothing new";
        readonly sentence: string;
      };
    };

export interface CodeHandOff {
  /** What this device has, as the content of a code sequence. The same as long as nothing changes. */
  holdings(): Promise<Uint8Array>;
  /** What this device has beyond another one's holdings. Changes nothing, and never throws, whatever the bytes. */
  answer(holdings: Uint8Array, madeBy?: string): Promise<MadeAnswer>;
  /** An answer to what this device has shown, as a bundle; any other is refused. Changes nothing, and never throws. */
  readAnswer(content: Uint8Array): Promise<BundleReading>;
}

/** What this device remembers of its own codes, so that an answer to an earlier one is taken too. */
const REMEMBERED = 32;

export function createCodeHandOff(context: HandOffContext): CodeHandOff {
  const { replicas, shown } = context;
  const sessions: Uint8Array[] = [];

  const holdings = async (): Promise<Uint8Array> => {
    await whenLoaded(context);
    const documents = [...replicas.values()]
      .map((replica) => ({ name: replica.name, vector: replica.vector() }))
      .sort((a, b) => (a.name < b.name ? -1 : 1));
    const content = writeHoldings(shown(), documents);
    const session = sessionOf(content);
    if (!sessions.some((known) => sameBytes(known, session))) sessions.push(session);
    if (sessions.length > REMEMBERED) sessions.shift();
    return content;
  };

  return {
    holdings,
    answer: async (content, madeBy) => {
      await whenLoaded(context);
      const theirs = readHoldings(content);
      if (theirs === undefined) {
        return refuse("damaged", "What the other device has cannot be read. Let it show its code anew.");
      }
      const own = [...replicas.values()].map((replica) => ({ replica, vector: Y.decodeStateVector(replica.vector()) }));
      const team = own.find(({ replica }) => replica.name === "team")?.vector ?? new Map<number, number>();
      if (team.size === 0)
        return refuse("nothing here", "This device has no team yet, so it has nothing to hand over.");
      if (isOfAnotherTeam(team, theirs)) {
        return refuse("another team", "The other device holds another team. Nothing is handed over.");
      }
      let entries = 0;
      const documents = own.flatMap(({ replica, vector }) => {
        const known = theirs.vectors.get(replica.name);
        if (known === undefined && !isWanted(replica.name, theirs.riders)) return [];
        const lacking = entriesBeyond(vector, known ?? new Map());
        entries += lacking;
        if (lacking === 0) return [];
        return [{ name: replica.name, update: replica.state(Y.encodeStateVector(new Map(known))) }];
      });
      if (entries === 0) return refuse("nothing new", "The other device has all that it wants from this one.");
      const facts = { device: context.deviceId, at: context.now(), ...(madeBy !== undefined && { madeBy }) };
      return { ok: true, content: writeAnswer({ to: sessionOf(content), ...facts, documents }), entries };
    },
    readAnswer: async (content) => {
      const reading = readAnswer(content);
      if (!reading.ok) return reading;
      const { answer } = reading;
      // After a reload nothing is remembered, but as long as nothing has changed the holdings are the same.
      await holdings();
      if (!sessions.some((session) => sameBytes(session, answer.to))) {
        return refuseBundle(
          "another device",
          "These codes answer another device. Let the other device read what this one has, and answer anew.",
        );
      }
      const documents: BundleDocument[] = [];
      for (const document of answer.documents) {
        if (parseDocumentName(document.name) === undefined) {
          return refuseBundle("refused document", "The codes hold something that is neither the team's nor a rider's.");
        }
        const inspection = await inspectHere(context, document);
        if (!inspection.ok) return refuseDocument(document.name, inspection.problem.sentence);
        documents.push({ ...document, records: inspection.records });
      }
      return { ok: true, bundle: bundleOf(answer, documents) };
    },
  };
}

/** Both have a team, and no writer's entries in common. */
function isOfAnotherTeam(own: ReadonlyMap<number, number>, { vectors }: Holdings): boolean {
  const theirs = vectors.get("team") ?? new Map<number, number>();
  return theirs.size > 0 && ![...own.keys()].some((client) => theirs.has(client));
}

function isWanted(name: string, riders: Holdings["riders"]): boolean {
  const scope = parseDocumentName(name);
  return scope?.scope === "team" || (scope !== undefined && (riders === "all" || riders.includes(scope.rider)));
}

function entriesBeyond(own: ReadonlyMap<number, number>, theirs: ReadonlyMap<number, number>): number {
  let count = 0;
  for (const [client, clock] of own) count += Math.max(0, clock - (theirs.get(client) ?? 0));
  return count;
}

function bundleOf({ device, madeBy, at }: Answer, documents: readonly BundleDocument[]): Bundle {
  const header = {
    format: bundleFormat,
    version: bundleVersion,
    schemaVersion: bundleSchemaVersion,
    ...(madeBy !== undefined && { madeBy }),
    device,
    at,
    documents: documents.map(summarize),
    bytes: documents.reduce((sum, { update }) => sum + update.length, 0),
  } as const;
  return { header, documents, isAnswer: true };
}

function refuse(type: Extract<MadeAnswer, { ok: false }>["problem"]["type"], sentence: string): MadeAnswer {
  return { ok: false, problem: { type, sentence } };
}
