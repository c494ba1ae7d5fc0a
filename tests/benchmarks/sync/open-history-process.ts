/** One way of opening the history, in a process of its own so that its memory is its own: `<way> <folder>`. */
import * as Y from "yjs";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { recordsName } from "#core/ledger/document.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { openBenchDevice } from "./bench-device.ts";
import { readHistory, readWholeHistory, riderName, writeHistory } from "./long-history.ts";
import type { OpenedHistory } from "./open-history.ts";

const TODAY = Date.UTC(2031, 8, 20, 9);
/** Nobody listens there: the device is offline. */
const NO_SERVER = 9;

const [way = "", folder = ""] = process.argv.slice(2);
if (way === "write") writeHistory(folder);
else if (way === "rider") await openDevice([riderName(0)]);
else if (way === "mechanic") await openDevice("all");
else if (way === "one document") openWhole();
else throw new Error(`There is no way "${way}" of opening the history.`);

async function openDevice(riders: "all" | readonly string[]): Promise<void> {
  let documents = 0;
  const storage: DeviceStorage = {
    ...createMemoryStorage(),
    load: async (name) => {
      const update = readHistory(folder, name);
      if (update !== undefined) documents += 1;
      return update === undefined ? [] : [update];
    },
  };
  const before = heapBytes();
  const begun = moment();
  const { team } = openBenchDevice({ id: "device", port: NO_SERVER, clock: TODAY, chance: createChance(1), storage });
  team.showRiders(riders);
  await new Promise<void>((resolve) => {
    const look = (): void => {
      const shown = riders === "all" ? team.ledger.keys(riderKind) : riders;
      if (team.isLoaded() && shown.length > 0 && documents > shown.length) resolve();
    };
    team.onStatus(look);
    look();
  });
  tell(team.ledger, documents, begun, before);
  team.close();
}

/** The other design: one document with every record. Its ledger is fed with what stands in each season, as here. */
function openWhole(): void {
  const before = heapBytes();
  const begun = moment();
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const ydoc = new Y.Doc();
  Y.applyUpdate(ydoc, readWholeHistory(folder));
  const bySeason = new Map<string, LedgerRecord[]>();
  for (const record of ydoc.getArray<LedgerRecord>(recordsName).toArray()) {
    const [, rider] = /^(?:setting|run):([^/]+)\//.exec(record.subject) ?? [];
    const name = rider === undefined ? "team" : `rider/${rider}/${record.at.slice(0, 4)}`;
    const known = bySeason.get(name);
    if (known === undefined) bySeason.set(name, [record]);
    else known.push(record);
  }
  for (const [name, records] of bySeason) ledger.addMany(records, name);
  tell(ledger, 1, begun, before);
  ydoc.destroy();
}

type Moment = { readonly clock: number; readonly processor: NodeJS.CpuUsage };

function moment(): Moment {
  return { clock: performance.now(), processor: process.cpuUsage() };
}

function tell(ledger: Ledger, documents: number, begun: Moment, before: number): void {
  const ms = performance.now() - begun.clock;
  const unreadable = ledger.unreadable().length;
  const opened: OpenedHistory = {
    ms,
    cpuMs: process.cpuUsage(begun.processor).user / 1000,
    records: ledger.size,
    unreadable,
    documents,
    heapMegabytes: (heapBytes() - before) / 1e6,
    peakMegabytes: process.resourceUsage().maxRSS / 1e3,
  };
  process.stdout.write(`${JSON.stringify(opened)}\n`);
}

function heapBytes(): number {
  if (globalThis.gc === undefined) throw new Error("Memory can only be measured with --expose-gc.");
  globalThis.gc();
  const { heapUsed, external } = process.memoryUsage();
  return heapUsed + external;
}
