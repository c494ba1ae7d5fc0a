/**
 * Looks at everything after every event, and says what must not be:
 *
 * - a record that a device calls "on the server" and that is not on the disk of the server at which it is
 * - a record that a device calls saved and that is not on its own disk
 * - a record that was once called on a server's disk and no longer is there
 * - more in memory than a bound: sockets, open documents, events that wait
 * - a record that leaves a device whose storage was not lost
 * - a record that one device claims to be on another's disk, and that never was there (receipt-judge.ts)
 * - after quiet: a receipt that is still missing
 * - after quiet: a server that lacks a record or does not know that its upstream has all, a gap on a disk,
 *   devices that differ in records or in what follows from them, a
 *   pair of concurrent different values that is no dispute, a dispute that nobody settled
 */
import type { RecordKind } from "#core/ledger/kind.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { WriteResult } from "#core/ledger/write.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { createDiskReader } from "./disk-reader.ts";
import { createReceiptJudge } from "./receipt-judge.ts";
import type { SimulatedDevice } from "./simulated-device.ts";
import type { SimulatedServer } from "./simulated-server.ts";
import type { VirtualTime } from "./virtual-time.ts";

/** Bounds of what is held in memory, generous for three documents and what a device or server has to do with them. */
const MOST_WAITING = 2000;
const MOST_SOCKETS = 12;
const MOST_DOCUMENTS = 6;

export interface Fault {
  readonly what: string;
}

export interface Witness {
  fault(): Fault | undefined;
  report(what: string): void;
  /** After each event. */
  look(): void;
  /** After each thing that happened: what devices say of each other. */
  judgeReceipts(): void;
  /** The device's storage is about to be emptied or set back. */
  losesStorage(device: SimulatedDevice): void;
  /** Every device says that all is on the server, and has as many records as the others. */
  isQuiet(): boolean;
  /** After everything was repaired and time has passed. */
  judgeQuiet(): void;
  wrote(result: WriteResult): void;
  /** The device's storage was emptied or set back: what only it had may be gone. */
  lostStorage(device: SimulatedDevice): void;
  /** A record is proven to be on the device's disk. */
  kept(device: SimulatedDevice, id: string): void;
  oldCopyOf(device: SimulatedDevice): ReadonlyMap<string, readonly Uint8Array[]> | undefined;
  rememberCopyOf(device: SimulatedDevice): void;
  recordOfOtherTab(device: SimulatedDevice, key: string, psi: number, ledger: Ledger): LedgerRecord<Setting>;
}

export interface WitnessContext {
  readonly devices: readonly SimulatedDevice[];
  readonly servers: readonly SimulatedServer[];
  readonly time: VirtualTime;
}

export function createWitness({ devices, servers, time }: WitnessContext): Witness {
  let fault: Fault | undefined;
  const onServer = new Map(servers.map((server) => [server, createDiskReader((name) => server.disk.load(name))]));
  const onDisk = new Map(
    devices.map((device) => [device, createDiskReader((name) => device.disk.copy().get(name) ?? [])]),
  );
  const saved = new Map(devices.map((device) => [device, new Set<string>()]));
  const copies = new Map<SimulatedDevice, ReadonlyMap<string, readonly Uint8Array[]>>();
  /** What each server was called the holder of. */
  const acknowledged = new Map(servers.map((server) => [server, new Set<string>()]));
  const byPeople = new Set<string>();
  let tabs = 0;
  /** The version of each server's disk that was looked at last. */
  const judged = new Map<SimulatedServer, number>();

  const report = (what: string): void => {
    fault ??= { what };
  };

  const diskIdsOf = (device: SimulatedDevice): ReadonlySet<string> =>
    onDisk.get(device)?.ids([...device.disk.copy().keys()]) ?? new Set();
  const serverIdsOf = (server: SimulatedServer): ReadonlySet<string> =>
    onServer.get(server)?.ids(server.disk.documents()) ?? new Set();
  const receipts = createReceiptJudge({
    devices,
    onDisk: diskIdsOf,
    idsOf: (device) => {
      const team = device.running();
      return team ? readableIds(team.ledger) : new Set();
    },
    report,
  });

  const seen = new Map<SimulatedDevice, string>();

  const lookAt = (device: SimulatedDevice): void => {
    const team = device.running();
    // The screen of a device that sleeps is dark: what it said last says nothing of the server to which it has gone since.
    if (!team?.isLoaded() || device.isAsleep()) return;
    const { state } = team.status();
    const server = device.network.server();
    const sight = [state, team.ledger.revision, device.disk.version(), server.name, server.diskVersion()].join(" ");
    if (seen.get(device) === sight) return;
    seen.set(device, sight);
    const ids = idsOf(team.ledger);
    if (state === "on the server") {
      const proven = device.takesTurns ? [...device.network.visited()] : [server];
      for (const id of ids) {
        const holders = proven.filter((one) => serverIdsOf(one).has(id));
        if (holders.length === 0)
          report(`${device.name} calls ${id} on the server, and ${server.name} does not have it`);
        for (const holder of holders) acknowledged.get(holder)?.add(id);
      }
    }
    const mine = saved.get(device);
    if (state === "loading" || state === "saving" || state === "not saved on this device" || !mine) return;
    const there = diskIdsOf(device);
    for (const id of ids) {
      if (!there.has(id)) report(`${device.name} calls ${id} saved, and its disk does not have it`);
      mine.add(id);
    }
    for (const id of mine) if (!there.has(id)) report(`${id} has left the disk of ${device.name}`);
  };

  const lookAtServer = (server: SimulatedServer): void => {
    if (server.diskVersion() === judged.get(server)) return;
    judged.set(server, server.diskVersion());
    const there = serverIdsOf(server);
    for (const id of acknowledged.get(server) ?? []) if (!there.has(id)) report(`${id} has left ${server.name}'s disk`);
  };

  const lookAtMemory = (): void => {
    if (time.waiting() > MOST_WAITING) report(`${time.waiting()} events wait`);
    for (const { name, network } of [...devices, ...servers]) {
      if ((network?.sockets() ?? 0) > MOST_SOCKETS) report(`${name} has ${network?.sockets()} sockets open`);
    }
    for (const server of servers) {
      const documents = server.status()?.documents ?? 0;
      if (documents > MOST_DOCUMENTS) report(`${server.name} has ${documents} documents open`);
    }
  };

  const isSettled = (server: SimulatedServer): boolean => {
    const status = server.upstreamStatus();
    return server.network === undefined || (status?.isConnected === true && status.documentsWaiting === 0);
  };

  return {
    fault: () => fault,
    report,
    look: () => {
      for (const device of devices) lookAt(device);
      for (const server of servers) lookAtServer(server);
      lookAtMemory();
    },
    judgeReceipts: receipts.judge,
    losesStorage: (device) => receipts.losesStorage(device, diskIdsOf(device)),
    isQuiet: () => {
      const sizes = devices.map((device) => {
        const team = device.running();
        return team?.status().state === "on the server" ? team.ledger.size : -1;
      });
      return (
        sizes.every((size) => size >= 0 && size === sizes[0]) &&
        servers.every((server) => isSettled(server) && serverIdsOf(server).size === sizes[0]) &&
        receipts.isComplete()
      );
    },
    judgeQuiet: () => {
      const teams = devices.flatMap((device) => device.running() ?? []);
      const expected = new Set([...acknowledged.values(), ...saved.values()].flatMap((ids) => [...ids]));
      const [first] = teams;
      if (!first || teams.length !== devices.length)
        return report("a device does not run after everything was repaired");
      for (const [index, team] of teams.entries()) {
        const name = devices[index]?.name ?? "";
        if (team.status().state !== "on the server") report(`${name} is ${team.status().state} after quiet`);
        const ids = idsOf(team.ledger);
        for (const id of expected) if (!ids.has(id)) report(`${name} lacks ${id}, which was saved or acknowledged`);
        const unreadable = team.ledger.unreadable();
        if (!unreadable.every(({ problem }) => devices[index]?.isOld && problem.type === "unknown kind"))
          report(`${name} cannot read a record`);
        const { kinds } = team.ledger.registry;
        if (derived(team.ledger, kinds) !== derived(first.ledger, kinds))
          report(`${name} derives another state than ${devices[0]?.name}`);
      }
      for (const device of devices) {
        if (onDisk.get(device)?.hasGaps([...device.disk.copy().keys()])) report(`the disk of ${device.name} has a gap`);
      }
      for (const server of servers) {
        if (!isSettled(server)) report(`${server.name} does not know that its upstream has all`);
        const there = serverIdsOf(server);
        for (const id of expected) if (!there.has(id)) report(`${server.name} lacks ${id} after quiet`);
        if (onServer.get(server)?.hasGaps(server.disk.documents())) report(`the disk of ${server.name} has a gap`);
      }
      judgeDisputes(first.ledger, byPeople, report);
      receipts.judge();
      if (!receipts.isComplete()) report("after quiet somebody does not know that all hold everything");
    },
    wrote: (result) => {
      if (!result.ok) return;
      for (const { id } of result.records) byPeople.add(id);
    },
    lostStorage: (device) => {
      seen.delete(device);
      saved.get(device)?.clear();
      onDisk.get(device)?.forget();
    },
    kept: (device, id) => {
      saved.get(device)?.add(id);
      byPeople.add(id);
    },
    oldCopyOf: (device) => copies.get(device),
    rememberCopyOf: (device) => void copies.set(device, device.disk.copy()),
    recordOfOtherTab: (device, key, psi, ledger) => {
      tabs += 1;
      const heads = ledger.heads(settingKind, key);
      const isSettled = settledValue(ledger.current(settingKind, key)) !== undefined;
      return {
        version: 1,
        id: `00000000000000000TAB${String(tabs).padStart(6, "0")}`,
        subject: `setting:${key}`,
        value: { quantity: { value: psi, unit: "psi" }, standing: "on the bike" },
        supersedes: isSettled ? heads.map(({ id }) => id) : [],
        by: device.name,
        device: `${device.name}-tab`,
        at: "2026-05-29T08:00:00.000Z",
      };
    },
  };
}

/** Also of the records that this version cannot read. */
function idsOf(ledger: Ledger): ReadonlySet<string> {
  const unreadable = ledger.unreadable().map(({ raw }) => (raw as LedgerRecord).id);
  return new Set([...readableIds(ledger), ...unreadable]);
}

function readableIds(ledger: Ledger): ReadonlySet<string> {
  return new Set(
    ledger.registry.kinds.flatMap((kind) =>
      ledger.keys(kind).flatMap((key) => ledger.history(kind, key).map(({ id }) => id)),
    ),
  );
}

/** Everything that follows from the records, as one text. */
function derived(ledger: Ledger, kinds: readonly RecordKind[]): string {
  return JSON.stringify(
    kinds.map((kind) => ledger.keys(kind).map((key) => [kind.kind, key, ledger.current(kind, key)])),
  );
}

/** Counted afresh from the records alone: what no record supersedes is current, and different values of it are a dispute. */
function judgeDisputes(ledger: Ledger, byPeople: ReadonlySet<string>, report: (what: string) => void): void {
  for (const key of ledger.keys(settingKind)) {
    const history = ledger.history(settingKind, key);
    const superseded = new Set(history.flatMap(({ supersedes }) => supersedes));
    const heads = history.filter(({ id }) => !superseded.has(id));
    const values = new Set(heads.map(({ value }) => JSON.stringify(value?.quantity ?? "none")));
    const state = ledger.current(settingKind, key).state;
    if (values.size > 1 !== (state === "disputed")) report(`${key} has ${values.size} values and is ${state}`);
    for (const { id, supersedes } of history) {
      if (supersedes.length > 1 && !byPeople.has(id)) report(`${id} settles a dispute, and no person wrote it`);
    }
  }
}
