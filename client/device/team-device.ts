/**
 * This device's copy of the team: the team's document, the season's documents of
 * the riders that it shows, one ledger over all of them, and a writer for the
 * person who holds the device.
 */
import { parseDocumentName } from "#core/ledger/documents.ts";
import { createKindRegistry, type RecordKind } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { createWriter, type Writer } from "#core/ledger/write.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { documentForRecord } from "#core/weekend/documents.ts";
import { createSocketSlots, type Rank } from "./connection/socket-slots.ts";
import { type DeviceSurroundings, type DocumentReplica, type Holding, openReplica } from "./document-replica.ts";
import type { CodeHandOff } from "./hand-off/codes/code-hand-off.ts";
import type { HandOff, HandOffContext } from "./hand-off/hand-off.ts";
import { openSeasons, writingSeason } from "./open-seasons.ts";
import { rememberOwing } from "./owing-documents.ts";
import { type SyncStatus, syncStatus } from "./sync-status.ts";

export interface TeamDevice extends HandOff {
  readonly ledger: Ledger;
  /** The local copies of all documents that are shown have been read: writing is possible. */
  isLoaded(): boolean;
  /** The team's own document has been read: who is in it, its bikes and weekends. */
  isTeamLoaded(): boolean;
  /** Documents that have been read, of those that are shown. */
  reading(): { readonly done: number; readonly of: number };
  /** The hand-off by codes; its code is loaded when it is first asked for. */
  codes(): Promise<CodeHandOff>;
  status(): SyncStatus;
  /** Sentences of the server's refusals, newest last. */
  refusals(): readonly string[];
  /** Writes as `memberId`. Use it once {@link TeamDevice.isLoaded}. */
  writerFor(memberId: string): Writer;
  /** Who is proven to hold a record on its disk; nobody for one that is not here. */
  holdingOf(recordId: string): Holding;
  /** Says who holds the device; undefined while nobody has said. */
  setHolder(memberId: string | undefined): void;
  /** Opens the seasons' documents of these riders; "all" for everybody in the team, also those who join later. */
  showRiders(riders: "all" | readonly string[]): void;
  /** Tries to reach the server at once: the network is back, or the page is. */
  wake(): void;
  onStatus(listener: () => void): () => void;
  close(): void;
}

export interface TeamDeviceContext extends DeviceSurroundings {
  readonly deviceId: string;
  /** Sockets at one time; a sensible number when left out. */
  readonly mostSockets?: number;
  /** The kinds of record that this version of the app knows; all when absent. Others are kept and passed on unread. */
  readonly kinds?: readonly RecordKind[];
  /** A new ULID for a moment (ms since the epoch); in rising order. */
  readonly newId: (moment: number) => string;
}

/** Opens the team on this device. */
export function openTeamDevice(context: TeamDeviceContext): TeamDevice {
  const { deviceId, newId } = context;
  const now = (): number => context.timers.now();
  const ledger = createLedger(createKindRegistry([...(context.kinds ?? allKinds)]));
  const slots = createSocketSlots(context.mostSockets);
  const rankOf = (name: string): Rank => {
    const scope = parseDocumentName(name);
    if (scope?.scope !== "rider") return 0;
    return scope.year === writingSeason(ledger, today()) ? 1 : 2;
  };
  const replicas = new Map<string, DocumentReplica>();
  const listeners = new Set<() => void>();
  let holder: string | undefined;
  let shown: "all" | readonly string[] = [];
  let offlineSince = now();
  let wasConnected = false;

  const factsChanged = (): void => {
    const all = [...replicas.values()].map((replica) => ({ name: replica.name, facts: replica.facts() }));
    const connected = all.length > 0 && all.every(({ facts }) => facts.connected);
    const seasons = all.filter(({ name }) => name !== "team");
    owing.follow(
      seasons.filter(({ facts }) => facts.waiting > 0).map(({ name }) => name),
      // What could not be read may owe something all the same.
      seasons.filter(({ facts }) => facts.loaded && !facts.storageFails && facts.waiting === 0).map(({ name }) => name),
    );
    if (wasConnected && !connected) offlineSince = now();
    wasConnected = connected;
    for (const listener of [...listeners]) listener();
  };
  const open = (name: string): DocumentReplica => {
    const known = replicas.get(name);
    if (known) return known;
    const replica = openReplica(name, {
      ...context,
      slots,
      rankOf,
      ledger,
      holder: () => holder,
      onFacts: factsChanged,
    });
    replicas.set(name, replica);
    return replica;
  };
  const today = (): string => new Date(now()).toISOString().slice(0, 10);
  const openShown = (): void => {
    const riders = shown === "all" ? ledger.keys(riderKind) : shown;
    const writing = writingSeason(ledger, today());
    const others = openSeasons(ledger, today()).filter((season) => season !== writing);
    // The season that is written first: who waits for a place waits in the order of opening.
    for (const season of [writing, ...others]) for (const rider of riders) open(`rider/${rider}/${season}`);
  };
  const owing = rememberOwing({ storage: context.storage, open, onRead: () => factsChanged() });
  open("team");
  const stopFollowing = ledger.onChange((subjects) => {
    for (const subject of subjects) {
      if (subject.startsWith("rider:") || subject.startsWith("weekend:")) return openShown();
    }
  });

  const onStatus = (listener: () => void): (() => void) => {
    listeners.add(listener);
    return () => void listeners.delete(listener);
  };
  const when = (condition: () => boolean): Promise<void> =>
    new Promise((resolve) => {
      if (condition()) return resolve();
      const stop = onStatus(() => {
        if (!condition()) return;
        stop();
        resolve();
      });
    });
  const handOffContext: HandOffContext = {
    ledger,
    replicas,
    open,
    shown: () => shown,
    storage: context.storage,
    deviceId,
    now: () => new Date(now()).toISOString(),
    when,
  };
  let opened: HandOff | undefined;
  // Few visits need it, and the first screen does not.
  const handOff = async (): Promise<HandOff> => {
    const { createHandOff } = await import("./hand-off/hand-off.ts");
    opened ??= createHandOff(handOffContext);
    return opened;
  };
  let codes: CodeHandOff | undefined;

  return {
    exportBundle: async (extent, madeBy) => (await handOff()).exportBundle(extent, madeBy),
    describeBundle: async (bundle) => (await handOff()).describeBundle(bundle),
    importBundle: async (bundle) => (await handOff()).importBundle(bundle),
    codes: async () => {
      const { createCodeHandOff } = await import("./hand-off/codes/code-hand-off.ts");
      codes ??= createCodeHandOff(handOffContext);
      return codes;
    },
    ledger,
    isLoaded: () => [...replicas.values()].every((replica) => replica.isLoaded()),
    isTeamLoaded: () => replicas.get("team")?.isLoaded() ?? false,
    reading: () => ({
      done: [...replicas.values()].filter((replica) => replica.isLoaded()).length,
      of: replicas.size,
    }),
    status: () =>
      owing.isRead()
        ? syncStatus(
            [...replicas.values()].map((replica) => replica.facts()),
            offlineSince,
          )
        : { state: "loading" },
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
        // Asked for every record of a batch before the first is appended: so a batch is written whole or not at all.
        documentFor: (kind: RecordKind, key: string) => {
          const name = documentForRecord(kind, key, writingSeason(ledger, today()));
          if (!open(name).isLoaded()) throw new Error(`The document ${name} has not loaded yet.`);
          return name;
        },
      }),
    holdingOf: (recordId) => {
      const replica = replicas.get(ledger.documentOf(recordId) ?? "");
      return replica?.holdingOf(recordId) ?? { server: false, devices: [] };
    },
    setHolder: (memberId) => {
      holder = memberId;
      for (const replica of replicas.values()) replica.holderChanged();
    },
    showRiders: (riders) => {
      shown = riders;
      openShown();
    },
    wake: () => {
      for (const replica of replicas.values()) replica.wake();
    },
    onStatus,
    close: () => {
      stopFollowing();
      owing.close();
      for (const replica of replicas.values()) replica.close();
      replicas.clear();
    },
  };
}
