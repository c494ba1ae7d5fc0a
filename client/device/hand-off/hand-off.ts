/**
 * Hand-off without a network: this device's documents into a file, and a file's
 * into this device's documents, all of it or nothing.
 */
import * as Y from "yjs";
import type { DocumentReplica } from "#client/device/document-replica.ts";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { inspectUpdate, type UpdateInspection } from "#core/ledger/update-guard.ts";
import { allowedUnpackedBytes, type Bundle, type BundleRefusal, type NamedUpdate, refuseBundle } from "./bundle.ts";
import { refuseDocument } from "./check-document.ts";
import { type BundleNews, describeBundle, isOfAnotherTeam } from "./describe-bundle.ts";
import { readKeptDocuments } from "./kept-documents.ts";
import { type MadeBundle, makeBundle } from "./make-bundle.ts";

export type DescribedBundle = { readonly ok: true; readonly news: BundleNews } | BundleRefusal;
export type MergedBundle =
  | {
      readonly ok: true;
      readonly news: BundleNews;
      /** Proven to be on this device's disk. */
      readonly saved: boolean;
    }
  | BundleRefusal;

export interface HandOff {
  /** The documents of this device, once they have been read: "all", or those that are open. */
  exportBundle(extent: "all" | "open", madeBy?: string): Promise<MadeBundle>;
  /** What the bundle would bring; changes nothing. */
  describeBundle(bundle: Bundle): Promise<DescribedBundle>;
  /** Merges all documents of the bundle, or none. A second time changes nothing. */
  importBundle(bundle: Bundle): Promise<MergedBundle>;
}

export interface HandOffContext {
  readonly ledger: Ledger;
  readonly replicas: ReadonlyMap<string, DocumentReplica>;
  /** Opens a document, or gives the one that is open. */
  open(name: string): DocumentReplica;
  /** Riders whose documents this device opens. */
  shown(): "all" | readonly string[];
  readonly storage: DeviceStorage;
  readonly deviceId: string;
  /** The time now, ISO 8601 in UTC. */
  now(): string;
  /** Settles when `condition` holds; it is asked again whenever the state of a document changes. */
  when(condition: () => boolean): Promise<void>;
}

export function createHandOff(context: HandOffContext): HandOff {
  const { ledger, replicas, open, when } = context;

  /** The records that each document here does not hold, or why one of them cannot be merged. */
  const compare = async (bundle: Bundle): Promise<Compared | BundleRefusal> => {
    await whenLoaded(context);
    if (!bundle.isAnswer && isOfAnotherTeam(ledger, bundle)) {
      return refuseBundle({ type: "another team" });
    }
    const fresh: LedgerRecord[] = [];
    const wanted: NamedUpdate[] = [];
    for (const document of bundle.documents) {
      const inspection = await inspectHere(context, document);
      if (!inspection.ok) return refuseDocument(document.name, inspection.problem);
      fresh.push(...inspection.records);
      if (inspection.records.length > 0) wanted.push(document);
    }
    return { ok: true, news: describeBundle(ledger, bundle, fresh), wanted };
  };

  return {
    exportBundle: async (extent, madeBy) => {
      await whenLoaded(context);
      const shown = [...replicas.values()].map((replica) => ({ name: replica.name, update: replica.state() }));
      const room = allowedUnpackedBytes - shown.reduce((sum, { update }) => sum + update.length, 0) - HEADROOM_BYTES;
      const kept =
        extent === "open"
          ? { documents: [], isIncomplete: false }
          : await readKeptDocuments(context.storage, (name) => replicas.has(name), room);
      return makeBundle({
        documents: [...shown, ...kept.documents],
        isIncomplete: kept.isIncomplete,
        device: context.deviceId,
        at: context.now(),
        ...(madeBy !== undefined && { madeBy }),
      });
    },
    describeBundle: async (bundle) => {
      const compared = await compare(bundle);
      return compared.ok ? { ok: true, news: compared.news } : compared;
    },
    importBundle: async (bundle) => {
      const before = await compare(bundle);
      if (!before.ok) return before;
      for (const { name } of before.wanted) open(name);
      // Documents have been read from the disk, and others may have written meanwhile: what is merged now is judged now.
      const compared = await compare(bundle);
      if (!compared.ok) return compared;
      const merged = compared.wanted.map(({ name, update }) => {
        const replica = open(name);
        replica.merge(update);
        return replica;
      });
      // What was taken in is shown, and saved as far as the storage lets it be.
      await when(() =>
        merged.every(({ isLoaded, facts }) => isLoaded() && (facts().unsaved === 0 || facts().storageFails)),
      );
      return { ok: true, news: compared.news, saved: merged.every(({ facts }) => facts().unsaved === 0) };
    },
  };
}

/** Names and lengths of the documents in a bundle. */
const HEADROOM_BYTES = 1024 * 1024;

interface Compared {
  readonly ok: true;
  readonly news: BundleNews;
  readonly wanted: readonly NamedUpdate[];
}

/** Settles when the local copies of all open documents have been read. */
export function whenLoaded({ replicas, when }: HandOffContext): Promise<void> {
  return when(() => [...replicas.values()].every(({ facts }) => facts().loaded));
}

/** Judges an update against what this device has of the document, open or not; changes nothing. */
export async function inspectHere(
  { replicas, storage }: HandOffContext,
  document: NamedUpdate,
): Promise<UpdateInspection> {
  const replica = replicas.get(document.name);
  return replica ? replica.inspect(document.update, allowedUnpackedBytes) : inspectClosed(document, storage);
}

/** Judges an update against the copy on the disk of a document that is not open, without opening it. */
async function inspectClosed({ name, update }: NamedUpdate, storage: DeviceStorage): Promise<UpdateInspection> {
  const ydoc = new Y.Doc();
  try {
    for (const kept of await storage.load(name)) Y.applyUpdate(ydoc, kept);
  } catch {
    // A disk that cannot be read says nothing about the file. It is read again when the document is opened.
  }
  const inspection = inspectUpdate(update, ydoc, { maximumBytes: allowedUnpackedBytes });
  ydoc.destroy();
  return inspection;
}
