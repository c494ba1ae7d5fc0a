/**
 * Hand-off by codes: what this device has, the answer to what another one has, and an answer read as a bundle, which then
 * is described and merged like one that came as a file.
 */
import { bytesEqual } from "#client/device/bytes-equal.ts";
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
import { sessionOf } from "./code-frame.ts";
import { type AnswerRefusal, compareHoldings, heldHere, refuseAnswer } from "./compare-holdings.ts";
import { readHoldings, writeHoldings } from "./holdings.ts";

export type MadeAnswer =
  | {
      readonly ok: true;
      readonly content: Uint8Array;
      /** Entries that the other device lacks. */
      readonly entries: number;
    }
  | AnswerRefusal;

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
    const documents = [...replicas.values()].map(heldHere).sort((a, b) => (a.name < b.name ? -1 : 1));
    const content = writeHoldings(shown(), documents);
    const session = sessionOf(content);
    if (!sessions.some((known) => bytesEqual(known, session))) sessions.push(session);
    if (sessions.length > REMEMBERED) sessions.shift();
    return content;
  };

  return {
    holdings,
    answer: async (content, madeBy) => {
      await whenLoaded(context);
      const theirs = readHoldings(content);
      if (theirs === undefined) {
        return refuseAnswer("damaged");
      }
      const comparison = compareHoldings([...replicas.values()], theirs);
      if (!comparison.ok) return comparison;
      const { documents, entries } = comparison;
      const facts = { device: context.deviceId, at: context.now(), ...(madeBy !== undefined && { madeBy }) };
      return { ok: true, content: writeAnswer({ to: sessionOf(content), ...facts, documents }), entries };
    },
    readAnswer: async (content) => {
      const reading = readAnswer(content);
      if (!reading.ok) return reading;
      const { answer } = reading;
      // After a reload nothing is remembered, but as long as nothing has changed the holdings are the same.
      await holdings();
      if (!sessions.some((session) => bytesEqual(session, answer.to))) {
        return refuseBundle({ type: "another device" });
      }
      const documents: BundleDocument[] = [];
      for (const document of answer.documents) {
        if (parseDocumentName(document.name) === undefined) {
          return refuseBundle({ type: "unknown document", of: "codes" });
        }
        const inspection = await inspectHere(context, document);
        if (!inspection.ok) return refuseDocument(document.name, inspection.problem);
        documents.push({ ...document, records: inspection.records });
      }
      return { ok: true, bundle: bundleOf(answer, documents) };
    },
  };
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
