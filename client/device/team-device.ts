/**
 * This device's copy of the team: the team's document, the season's documents of
 * the riders that it shows, one ledger over all of them, and a writer for the
 * person who holds the device.
 */
import { monotonicFactory } from "ulid";
import { createKindRegistry, type RecordKind } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { createWriter, type Writer } from "#core/ledger/write.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { documentForRecord } from "#core/weekend/documents.ts";
import { allKinds } from "#core/weekend/record-kinds.ts";
import { type DocumentReplica, openReplica } from "./document-replica.ts";
import { openSeasons, writingSeason } from "./open-seasons.ts";
import { type SyncStatus, syncStatus } from "./sync-status.ts";

export interface TeamDevice {
  readonly ledger: Ledger;
  /** The local copies of all documents that are shown have been read: writing is possible. */
  isLoaded(): boolean;
  status(): SyncStatus;
  /** Sentences of the server's refusals, newest last. */
  refusals(): readonly string[];
  /** Writes as `memberId`. Use it once {@link TeamDevice.isLoaded}. */
  writerFor(memberId: string): Writer;
  /** Opens the seasons' documents of these riders; "all" for everybody in the team, also those who join later. */
  showRiders(riders: "all" | readonly string[]): void;
  onStatus(listener: () => void): () => void;
  close(): void;
}

export interface TeamDeviceContext {
  /** Such as `ws://127.0.0.1:4680/sync`. */
  readonly serverUrl: string;
  /** Begins the names of the databases in the browser's storage. */
  readonly storageName: string;
  /** Tabs of one browser tell each other of changes without the server. */
  readonly sharesWithTabs: boolean;
  readonly deviceId: string;
  readonly now: () => number;
}

/** Opens the team on this device. */
export function openTeamDevice(context: TeamDeviceContext): TeamDevice {
  const { serverUrl, storageName, sharesWithTabs, deviceId, now } = context;
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const newId = monotonicFactory();
  const replicas = new Map<string, DocumentReplica>();
  const listeners = new Set<() => void>();
  let shown: "all" | readonly string[] = [];
  let offlineSince = now();
  let wasConnected = false;

  const factsChanged = (): void => {
    const connected = replicas.size > 0 && [...replicas.values()].every((replica) => replica.facts().connected);
    if (wasConnected && !connected) offlineSince = now();
    wasConnected = connected;
    for (const listener of [...listeners]) listener();
  };
  const open = (name: string): DocumentReplica => {
    const known = replicas.get(name);
    if (known) return known;
    const replica = openReplica(name, { serverUrl, storageName, sharesWithTabs, ledger, onFacts: factsChanged });
    replicas.set(name, replica);
    return replica;
  };
  const today = (): string => new Date(now()).toISOString().slice(0, 10);
  const openShown = (): void => {
    const riders = shown === "all" ? ledger.keys(riderKind) : shown;
    const seasons = openSeasons(ledger, today());
    for (const rider of riders) for (const season of seasons) open(`rider/${rider}/${season}`);
  };
  open("team");
  const stopFollowing = ledger.onChange((subjects) => {
    for (const subject of subjects) {
      if (subject.startsWith("rider:") || subject.startsWith("weekend:")) return openShown();
    }
  });

  return {
    ledger,
    isLoaded: () => [...replicas.values()].every((replica) => replica.facts().loaded),
    status: () =>
      syncStatus(
        [...replicas.values()].map((replica) => replica.facts()),
        offlineSince,
      ),
    refusals: () => [...replicas.values()].flatMap((replica) => replica.facts().refusal ?? []),
    writerFor: (memberId) =>
      createWriter({
        ledger,
        append: (record, document) => open(document).append([record]),
        appendMany: (records, document) => open(document).append(records),
        newId: () => newId(now()),
        now: () => new Date(now()).toISOString(),
        by: memberId,
        device: deviceId,
        documentFor: (kind: RecordKind, key: string) => documentForRecord(kind, key, writingSeason(ledger, today())),
      }),
    showRiders: (riders) => {
      shown = riders;
      openShown();
    },
    onStatus: (listener) => {
      listeners.add(listener);
      return () => void listeners.delete(listener);
    },
    close: () => {
      stopFollowing();
      for (const replica of replicas.values()) replica.close();
      replicas.clear();
    },
  };
}
