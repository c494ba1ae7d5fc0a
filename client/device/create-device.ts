/**
 * The device as the screens use it: signals over the ledger and the sync state,
 * and acts that write. `create…` owns its scope: it closes with its owner.
 */
import { type Accessor, createMemo, createSignal, onCleanup } from "solid-js";
import { monotonicFactory } from "ulid";
import type { RecordKind } from "#core/ledger/kind.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { splitSubject } from "#core/ledger/record.ts";
import type { WithdrawEntry, WriteEntry, WriteOptions, WriteResult, Writer } from "#core/ledger/write.ts";
import type { Member } from "#core/team/people.ts";
import { memberKind } from "#core/team/record-kinds.ts";
import { afterPaint, browserTimers, inTheBackground, wakeOnReturn } from "./browser-time.ts";
import { webSockets } from "./connection/socket.ts";
import type { Holding } from "./document-replica.ts";
import type { Bundle } from "./hand-off/bundle.ts";
import type { DescribedBundle, MergedBundle } from "./hand-off/hand-off.ts";
import type { MadeBundle } from "./hand-off/make-bundle.ts";
import { deviceId, storedMember, storeMember } from "./identity.ts";
import { browserStorage } from "./storage/browser-storage.ts";
import { createIndexedDbStorage } from "./storage/indexed-db-storage.ts";
import { createLastingStorage, type StoragePromise, type StorageSpace } from "./storage/lasting-storage.ts";
import { readInTurn } from "./storage/read-in-turn.ts";
import type { SyncStatus } from "./sync-status.ts";
import { openTeamDevice, type TeamDevice } from "./team-device.ts";

export interface Device {
  /** The ledger; reading it inside a computation re-runs that computation when records change. */
  readonly ledger: Accessor<Ledger>;
  /** The local copy of the team has been read: writing is possible. */
  readonly loaded: Accessor<boolean>;
  /** The team's own document has been read: who is in it, its bikes and weekends. */
  readonly teamLoaded: Accessor<boolean>;
  /** Documents that have been read, of those that are shown. */
  readonly reading: Accessor<{ readonly done: number; readonly of: number }>;
  readonly status: Accessor<SyncStatus>;
  readonly refusals: Accessor<readonly string[]>;
  readonly memberId: Accessor<string | undefined>;
  readonly member: Accessor<Member | undefined>;
  identify(memberId: string | undefined): void;
  /** Writes all entries as one batch, or none. */
  write(entries: readonly (WriteEntry | WithdrawEntry)[], options?: WriteOptions): WriteResult;
  revert(recordId: string): WriteResult;
  /** Takes a subject back, with the reason (1 to 500 characters); its records stay readable. */
  withdraw(kind: RecordKind, key: string, reason: string, options?: WriteOptions): WriteResult;
  resolve: Writer["resolve"];
  /** Who is proven to hold a record on its disk. */
  holdingOf(recordId: string): Holding;
  /** What the browser has said about keeping all this; it is asked after the first entry of a visit. */
  readonly storagePromise: Accessor<StoragePromise>;
  readonly storageSpace: Accessor<StorageSpace | undefined>;
  measureSpace(): Promise<void>;
  /** The documents of this device as one file: "all" that are on it, or those that are open. */
  exportBundle(extent: "all" | "open"): Promise<MadeBundle>;
  /** What a bundle would bring; changes nothing. */
  describeBundle(bundle: Bundle): Promise<DescribedBundle>;
  /** Merges a bundle, all of it or nothing. */
  importBundle(bundle: Bundle): Promise<MergedBundle>;
  /** The hand-off by codes; its code is loaded when it is first asked for. */
  codes: TeamDevice["codes"];
}

/** Opens the team on this device. Call it once, under the root. */
export function createDevice(): Device {
  const storage = browserStorage();
  const socketOrigin = location.origin.replace(/^http/, "ws");
  const newId = monotonicFactory();
  const team = openTeamDevice({
    storage: readInTurn(createIndexedDbStorage("pitslate"), inTheBackground),
    openSocket: webSockets(`${socketOrigin}/sync`),
    timers: browserTimers,
    inTheBackground,
    random: Math.random,
    tabsName: "pitslate",
    deviceId: deviceId(storage),
    newId: (moment) => newId(moment),
  });
  const [revision, setRevision] = createSignal(team.ledger.revision);
  const [facts, setFacts] = createSignal(0);
  const [memberId, setMemberId] = createSignal(storedMember(storage));
  const [storageFacts, setStorageFacts] = createSignal(0);
  const lasting = createLastingStorage(navigator.storage, () => void setStorageFacts((count) => count + 1));
  /** Whoever has just pressed to write knows what the browser may now ask about. */
  const written = (result: WriteResult): WriteResult => {
    if (result.ok) void lasting.ask();
    return result;
  };
  const isAboutTeam = (subjects: ReadonlySet<string>): boolean => {
    const [first] = subjects;
    return first !== undefined && team.ledger.registry.find(splitSubject(first).kind)?.scope === "team";
  };
  let wasLoaded = false;
  let isDue = false;
  let isClosed = false;
  /** A press is answered before all that follows from what it wrote is worked out, and what comes together is worked out once. */
  const followSoon = (): void => {
    if (isDue) return;
    isDue = true;
    afterPaint(() => {
      isDue = false;
      if (!isClosed) setRevision(team.ledger.revision);
    });
  };
  const stops = [
    team.ledger.onChange((subjects) => {
      if (wasLoaded && team.isLoaded()) followSoon();
      // While copies are read nobody works out anew what the next hundreds of records will change.
      else if (isAboutTeam(subjects)) setRevision(team.ledger.revision);
    }),
    team.onStatus(() => {
      setFacts((count) => count + 1);
      const isLoaded = team.isLoaded();
      if (isLoaded && !wasLoaded) setRevision(team.ledger.revision);
      wasLoaded = isLoaded;
    }),
  ];
  const sleepless = wakeOnReturn(team.wake);
  onCleanup(() => {
    isClosed = true;
    sleepless();
    for (const stop of stops) stop();
    team.close();
  });
  team.setHolder(memberId());
  const ledger = (): Ledger => {
    revision();
    return team.ledger;
  };
  const member = createMemo((): Member | undefined => {
    const id = memberId();
    return id === undefined ? undefined : settledValue(ledger().current(memberKind, id));
  });
  createMemo(() => {
    const who = member();
    if (who) team.showRiders(who.role === "rider" ? (who.rider === undefined ? [] : [who.rider]) : "all");
  });
  const writer = (): Writer => {
    const id = memberId();
    if (id === undefined) throw new Error("Somebody has to say who holds the device before anything is written.");
    return team.writerFor(id);
  };
  return {
    ledger,
    loaded: () => {
      facts();
      return team.isLoaded();
    },
    teamLoaded: () => {
      facts();
      return team.isTeamLoaded();
    },
    reading: () => {
      facts();
      return team.reading();
    },
    status: () => {
      facts();
      return team.status();
    },
    refusals: () => {
      facts();
      return team.refusals();
    },
    memberId,
    member,
    identify: (id) => {
      storeMember(storage, id);
      setMemberId(id);
      team.setHolder(id);
    },
    write: (entries, options) => written(writer().setMany(entries, options)),
    revert: (recordId) => written(writer().revert(recordId)),
    withdraw: (kind, key, reason, options) => written(writer().voidSubject(kind, key, reason, options)),
    resolve: (kind, key, value, options) => written(writer().resolve(kind, key, value, options)),
    holdingOf: (recordId) => {
      facts();
      return team.holdingOf(recordId);
    },
    storagePromise: () => {
      storageFacts();
      return lasting.promise();
    },
    storageSpace: () => {
      storageFacts();
      return lasting.space();
    },
    measureSpace: lasting.measure,
    exportBundle: (extent) => team.exportBundle(extent, member()?.name),
    describeBundle: team.describeBundle,
    importBundle: team.importBundle,
    codes: team.codes,
  };
}
