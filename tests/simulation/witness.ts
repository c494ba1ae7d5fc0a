/**
 * Looks at everything after every event, and says what must not be:
 *
 * - a record that a device calls "on the server" and that is not on the server's disk
 * - a record that a device calls saved and that is not on its own disk
 * - a record that was once on the server's disk and no longer is
 * - a record that leaves a device whose storage was not lost
 * - a record that one device claims to be on another's disk, and that never was there (receipt-judge.ts)
 * - after quiet: a receipt that is still missing
 * - after quiet: devices that differ in records or in what follows from them, a
 *   pair of concurrent different values that is no dispute, a dispute that nobody settled
 */
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { WriteResult } from "#core/ledger/write.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { createDiskReader, type DiskReader } from "./disk-reader.ts";
import { createReceiptJudge } from "./receipt-judge.ts";
import type { SimulatedDevice } from "./simulated-device.ts";
import type { SimulatedServer } from "./simulated-server.ts";

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

export function createWitness(devices: readonly SimulatedDevice[], server: SimulatedServer): Witness {
  let fault: Fault | undefined;
  const onServer: DiskReader = createDiskReader((document) => server.disk.load(document));
  const onDisk = new Map(
    devices.map((device) => [device, createDiskReader((name) => device.disk.copy().get(name) ?? [])]),
  );
  const saved = new Map(devices.map((device) => [device, new Set<string>()]));
  const copies = new Map<SimulatedDevice, ReadonlyMap<string, readonly Uint8Array[]>>();
  const acknowledged = new Set<string>();
  const byPeople = new Set<string>();
  let tabs = 0;
  /** The version of the server's disk that was looked at last. */
  let judged = -1;

  const report = (what: string): void => {
    fault ??= { what };
  };

  const diskIdsOf = (device: SimulatedDevice): ReadonlySet<string> =>
    onDisk.get(device)?.ids([...device.disk.copy().keys()]) ?? new Set();
  const receipts = createReceiptJudge({
    devices,
    onDisk: diskIdsOf,
    idsOf: (device) => {
      const team = device.running();
      return team ? idsOf(team.ledger) : new Set();
    },
    report,
  });

  const seen = new Map<SimulatedDevice, string>();

  const lookAt = (device: SimulatedDevice): void => {
    const team = device.running();
    if (!team?.isLoaded()) return;
    const { state } = team.status();
    const sight = [state, team.ledger.revision, device.disk.version(), server.diskVersion()].join(" ");
    if (seen.get(device) === sight) return;
    seen.set(device, sight);
    const ids = idsOf(team.ledger);
    if (state === "on the server") {
      const there = onServer.ids(server.disk.documents());
      for (const id of ids) {
        if (!there.has(id)) report(`${device.name} calls ${id} on the server, and the server's disk does not have it`);
        acknowledged.add(id);
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

  return {
    fault: () => fault,
    report,
    look: () => {
      for (const device of devices) lookAt(device);
      if (server.diskVersion() === judged) return;
      judged = server.diskVersion();
      const there = onServer.ids(server.disk.documents());
      for (const id of acknowledged) if (!there.has(id)) report(`${id} has left the server's disk`);
    },
    judgeReceipts: receipts.judge,
    losesStorage: (device) => receipts.losesStorage(device, diskIdsOf(device)),
    isQuiet: () => {
      const sizes = devices.map((device) => {
        const team = device.running();
        return team?.status().state === "on the server" ? team.ledger.size : -1;
      });
      return sizes.every((size) => size >= 0 && size === sizes[0]) && receipts.isComplete();
    },
    judgeQuiet: () => {
      const teams = devices.flatMap((device) => device.running() ?? []);
      const expected = new Set([...acknowledged, ...[...saved.values()].flatMap((ids) => [...ids])]);
      const [first] = teams;
      if (!first || teams.length !== devices.length)
        return report("a device does not run after everything was repaired");
      for (const [index, team] of teams.entries()) {
        const name = devices[index]?.name ?? "";
        if (team.status().state !== "on the server") report(`${name} is ${team.status().state} after quiet`);
        const ids = idsOf(team.ledger);
        for (const id of expected) if (!ids.has(id)) report(`${name} lacks ${id}, which was saved or acknowledged`);
        if (team.ledger.unreadable().length > 0) report(`${name} cannot read a record`);
        if (derived(team.ledger) !== derived(first.ledger))
          report(`${name} derives another state than ${devices[0]?.name}`);
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

function idsOf(ledger: Ledger): ReadonlySet<string> {
  return new Set(
    [...ledger.registry.kinds].flatMap((kind) =>
      ledger.keys(kind).flatMap((key) => ledger.history(kind, key).map(({ id }) => id)),
    ),
  );
}

/** Everything that follows from the records, as one text. */
function derived(ledger: Ledger): string {
  return JSON.stringify(
    [...ledger.registry.kinds].map((kind) =>
      ledger.keys(kind).map((key) => [kind.kind, key, ledger.current(kind, key)]),
    ),
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
