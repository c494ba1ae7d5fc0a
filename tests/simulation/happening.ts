/** What can happen on a race weekend, to the bikes and to the devices. */
import * as Y from "yjs";
import { settledValue } from "#core/ledger/ledger.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { Chance } from "./chance.ts";
import type { SimulatedDevice } from "./simulated-device.ts";
import type { SimulatedServer } from "./simulated-server.ts";
import type { Witness } from "./witness.ts";

export interface Stage {
  readonly devices: readonly SimulatedDevice[];
  readonly server: SimulatedServer;
  readonly witness: Witness;
  readonly chance: Chance;
}

export interface Happening {
  readonly what: string;
  act(stage: Stage): void;
}

/** In words, for the script of a failing seed. */
export function describeHappening({ what }: Happening): string {
  return what;
}

const keys = [
  "alder/alder-1/fork.main-pressure",
  "alder/alder-1/rear-tyre.tyre-pressure",
  "linden/linden-1/fork.main-pressure",
];

/** The next thing to happen, by how often it happens in a pit, sped up a great deal. */
export function nextHappening(chance: Chance, devices: readonly SimulatedDevice[]): Happening {
  const device = chance.one(devices);
  const dice = chance.next();
  if (dice < 0.5) return setting(device, chance);
  if (dice < 0.56) return undo(device, chance);
  if (dice < 0.64) return resolve(device, chance);
  if (dice < 0.72) return network(device, chance.one(["up", "up", "down", "half open"] as const));
  if (dice < 0.76) return trouble(device, chance.one([0, 0.1, 0.3]));
  if (dice < 0.84) return device.running() ? dies(device) : starts(device);
  if (dice < 0.88) return full(device, chance.happens(0.4));
  if (dice < 0.91) return serverDies(chance.happens(0.5));
  if (dice < 0.93) return serverFull(chance.happens(0.4));
  if (dice < 0.95) return wiped(device);
  if (dice < 0.98) return restored(device, chance.happens(0.5));
  return otherTab(device, chance);
}

function setting(device: SimulatedDevice, chance: Chance): Happening {
  const key = chance.one(keys);
  const psi = chance.whole(20, 60);
  return {
    what: `${device.name} sets ${key} to ${psi}`,
    act: ({ witness }) => {
      const team = writable(device, key);
      if (!team) return;
      const value: Setting = { quantity: { value: psi, unit: "psi" }, standing: "on the bike" };
      const known = team.ledger.current(settingKind, key).state !== "disputed";
      // A person who sees a dispute resolves it; he does not write over it.
      if (known)
        witness.wrote(team.writerFor(device.name).set(settingKind, key, value, { cause: { type: "by hand" } }));
    },
  };
}

function undo(device: SimulatedDevice, chance: Chance): Happening {
  const key = chance.one(keys);
  return {
    what: `${device.name} undoes the last change of ${key}`,
    act: ({ witness }) => {
      const team = writable(device, key);
      const current = team?.ledger.current(settingKind, key);
      if (!team || current?.state !== "settled") return;
      const last = current.heads[0];
      if (last) witness.wrote(team.writerFor(device.name).revert(last.id));
    },
  };
}

function resolve(device: SimulatedDevice, chance: Chance): Happening {
  const key = chance.one(keys);
  return {
    what: `${device.name} looks at the bike for ${key}`,
    act: ({ witness }) => {
      const team = writable(device, key);
      const current = team?.ledger.current(settingKind, key);
      if (!team || current?.state !== "disputed") return;
      const claim = current.claims.find(({ value }) => value !== undefined);
      if (claim?.value) witness.wrote(team.writerFor(device.name).resolve(settingKind, key, claim.value));
    },
  };
}

function network(device: SimulatedDevice, state: "up" | "down" | "half open"): Happening {
  return { what: `the network of ${device.name} is ${state}`, act: () => device.network.setState(state) };
}

function trouble(device: SimulatedDevice, amount: number): Happening {
  return {
    what: `${amount * 100} % of the messages of ${device.name} are spoiled`,
    act: () => device.network.setTrouble(amount),
  };
}

function dies(device: SimulatedDevice): Happening {
  return {
    what: `${device.name} dies`,
    act: () => {
      device.network.dropAll();
      device.die();
    },
  };
}

function starts(device: SimulatedDevice): Happening {
  return {
    what: `${device.name} starts, and somebody copies its disk`,
    act: ({ witness }) => {
      witness.rememberCopyOf(device);
      device.start();
    },
  };
}

function full(device: SimulatedDevice, isFull: boolean): Happening {
  return {
    what: `the disk of ${device.name} is ${isFull ? "full" : "free"}`,
    act: () => device.disk.setFull(isFull),
  };
}

function serverDies(forLong: boolean): Happening {
  return {
    what: forLong ? "the server dies" : "the server dies and starts",
    act: ({ server }) => {
      if (!server.isRunning()) return server.start();
      server.kill();
      if (!forLong) server.start();
    },
  };
}

function serverFull(isFull: boolean): Happening {
  return { what: `the server's disk is ${isFull ? "full" : "free"}`, act: ({ server }) => server.setFull(isFull) };
}

function wiped(device: SimulatedDevice): Happening {
  return {
    what: `the browser empties the storage of ${device.name}`,
    act: ({ witness }) => {
      device.network.dropAll();
      device.die();
      witness.losesStorage(device);
      device.disk.wipe();
      witness.lostStorage(device);
      device.start();
    },
  };
}

/** @param withNumbers its Yjs client numbers come back too, so that new entries get numbers that are taken elsewhere */
function restored(device: SimulatedDevice, withNumbers: boolean): Happening {
  return {
    what: `${device.name} is restored from an old copy${withNumbers ? " with the client numbers that it had" : ""}`,
    act: ({ witness }) => {
      const copy = witness.oldCopyOf(device);
      if (!copy) return witness.rememberCopyOf(device);
      device.network.dropAll();
      device.die();
      witness.losesStorage(device);
      device.disk.restore(copy);
      witness.lostStorage(device);
      // What is written out of reach gets numbers that are taken: Yjs takes others only when it hears of them.
      if (withNumbers) device.network.setState("down");
      device.start(withNumbers);
    },
  };
}

/** A second tab of the same browser keeps an entry that this one has not seen, and this one's next write fails. */
function otherTab(device: SimulatedDevice, chance: Chance): Happening {
  const key = chance.one(keys);
  const psi = chance.whole(20, 60);
  const client = chance.whole(1, 0x7fff_ffff);
  return {
    what: `another tab of ${device.name} sets ${key} to ${psi}`,
    act: ({ witness }) => {
      const team = writable(device, key);
      if (!team) return;
      const record = witness.recordOfOtherTab(device, key, psi, team.ledger);
      const tab = new Y.Doc();
      tab.clientID = client;
      tab.getArray("records").push([record]);
      device.disk.keepFromOtherTab(`rider/${key.slice(0, key.indexOf("/"))}/2026`, Y.encodeStateAsUpdate(tab));
      witness.kept(device, record.id);
      device.disk.failNext();
      tab.destroy();
    },
  };
}

/** The device, when it runs, has loaded, and knows the rider of `key`. */
function writable(device: SimulatedDevice, key: string) {
  const team = device.running();
  const rider = key.slice(0, key.indexOf("/"));
  return team?.isLoaded() && settledValue(team.ledger.current(riderKind, rider)) ? team : undefined;
}
