/**
 * What can happen on a race weekend, to the bikes, the devices and the servers. Everything is drawn beforehand, and what
 * one happening does leaves the others what they are: so any of them can be left out to see whether a fault stays.
 */
import * as Y from "yjs";
import { settledValue } from "#core/ledger/ledger.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { settingKind, venueKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { Chance } from "./chance.ts";
import type { SimulatedDevice } from "./simulated-device.ts";
import { type LinkState, linkStates, type SimulatedNetwork } from "./simulated-network.ts";
import type { SimulatedServer } from "./simulated-server.ts";
import type { Witness } from "./witness.ts";

export interface Stage {
  readonly devices: readonly SimulatedDevice[];
  /** The home server first. */
  readonly servers: readonly SimulatedServer[];
  readonly witness: Witness;
}

export interface Happening {
  /** In words, for the script of a failing seed. */
  readonly what: string;
  /** ms after the one before it. */
  readonly pause: number;
  act(stage: Stage): void;
}

/** Who is there, for whom things can happen. */
export interface Cast {
  readonly devices: number;
  readonly servers: number;
}

/** What happens comes this far apart, ms. */
const LONGEST_PAUSE_MS = 400;

const keys = [
  "alder/alder-1/fork.main-pressure",
  "alder/alder-1/rear-tyre.tyre-pressure",
  "linden/linden-1/fork.main-pressure",
];

/** All that happens on one weekend, in order. */
export function planWeekend(chance: Chance, cast: Cast, count: number): readonly Happening[] {
  return Array.from({ length: count }, () => ({
    pause: chance.whole(0, LONGEST_PAUSE_MS),
    ...draw(chance, cast),
  }));
}

type Drawn = Omit<Happening, "pause">;

/** The next thing to happen, by how often it happens in a pit, sped up a great deal. */
function draw(chance: Chance, { devices, servers }: Cast): Drawn {
  const device = chance.whole(0, devices - 1);
  const dice = chance.next();
  if (servers > 1 && chance.happens(0.15)) return betweenServers(chance, device, servers);
  if (dice < 0.43) return setting(device, chance);
  if (dice < 0.46) return venue(device, chance);
  if (dice < 0.5) return undo(device, chance);
  if (dice < 0.58) return resolve(device, chance);
  if (dice < 0.66) return network(device, chance.one(["up", "up", "down", "half open"]));
  if (dice < 0.69) return trouble(device, chance.one([0, 0.1, 0.3]), chance.happens(0.4));
  if (dice < 0.76) return power(device);
  if (dice < 0.79) return sleeps(device, chance.whole(200, 9000));
  if (dice < 0.83) return full(device, chance.happens(0.4));
  if (dice < 0.86) return serverDies(chance.whole(0, servers - 1), chance.happens(0.5));
  if (dice < 0.88) return serverFull(chance.whole(0, servers - 1), chance.happens(0.4));
  if (dice < 0.9) return wiped(device);
  if (dice < 0.95) return restored(device, chance.happens(0.5));
  return otherTab(device, chance);
}

function betweenServers(chance: Chance, device: number, servers: number): Drawn {
  const server = chance.whole(1, servers - 1);
  const dice = chance.next();
  if (dice < 0.4) return moves(device, chance.whole(0, servers - 1));
  if (dice < 0.8) return link(server, chance.one(["up", ...linkStates]));
  return linkTrouble(server, chance.one([0, 0.1, 0.3]), chance.happens(0.4));
}

/** Something that happens to one device. */
function toDevice(index: number, what: string, act: (device: SimulatedDevice, witness: Witness) => void): Drawn {
  return {
    what: `device-${index} ${what}`,
    act: ({ devices, witness }) => {
      const device = devices[index];
      if (device) act(device, witness);
    },
  };
}

function setting(index: number, chance: Chance): Drawn {
  const key = chance.one(keys);
  const psi = chance.whole(20, 60);
  return toDevice(index, `sets ${key} to ${psi}`, (device, witness) => {
    const team = writable(device, key);
    if (!team) return;
    const value: Setting = { quantity: { value: psi, unit: "psi" }, standing: "on the bike" };
    // A person who sees a dispute resolves it; he does not write over it.
    if (team.ledger.current(settingKind, key).state === "disputed") return;
    witness.wrote(team.writerFor(device.name).set(settingKind, key, value, { cause: { type: "by hand" } }));
  });
}

/** What devices of the old version cannot read. */
function venue(index: number, chance: Chance): Drawn {
  const metres = chance.whole(0, 2500);
  return toDevice(index, `enters the altitude of the venue, ${metres} m`, (device, witness) => {
    const team = device.running();
    if (device.isOld || !team?.isLoaded()) return;
    const value = { name: "Ridge", altitude: { value: metres, unit: "m" } } as const;
    witness.wrote(team.writerFor(device.name).set(venueKind, "ridge", value));
  });
}

function undo(index: number, chance: Chance): Drawn {
  const key = chance.one(keys);
  return toDevice(index, `undoes the last change of ${key}`, (device, witness) => {
    const team = writable(device, key);
    const current = team?.ledger.current(settingKind, key);
    if (!team || current?.state !== "settled") return;
    const last = current.heads[0];
    if (last) witness.wrote(team.writerFor(device.name).revert(last.id));
  });
}

function resolve(index: number, chance: Chance): Drawn {
  const key = chance.one(keys);
  return toDevice(index, `looks at the bike for ${key}`, (device, witness) => {
    const team = writable(device, key);
    const current = team?.ledger.current(settingKind, key);
    if (!team || current?.state !== "disputed") return;
    const claim = current.claims.find(({ value }) => value !== undefined);
    if (claim?.value) witness.wrote(team.writerFor(device.name).resolve(settingKind, key, claim.value));
  });
}

function network(index: number, state: LinkState): Drawn {
  return toDevice(index, `has its network ${state}`, (device) => device.network.setState(state));
}

function trouble(index: number, amount: number, cuts: boolean): Drawn {
  return toDevice(index, `has ${amount * 100} % of its messages spoiled${cuts ? ", some cut" : ""}`, (device) =>
    device.network.setTrouble(amount, cuts),
  );
}

function power(index: number): Drawn {
  return toDevice(index, "dies; or starts, and somebody copies its disk", (device, witness) => {
    if (device.running()) stop(device);
    else {
      witness.rememberCopyOf(device);
      device.start();
    }
  });
}

function sleeps(index: number, ms: number): Drawn {
  return toDevice(index, `sleeps for ${ms} ms`, (device) => device.sleep(ms));
}

function full(index: number, isFull: boolean): Drawn {
  return toDevice(index, `has its disk ${isFull ? "full" : "free"}`, (device) => device.disk.setFull(isFull));
}

function wiped(index: number): Drawn {
  return toDevice(index, "has its storage emptied by the browser", (device, witness) => {
    stop(device);
    witness.losesStorage(device);
    device.disk.wipe();
    witness.lostStorage(device);
    device.start();
  });
}

/** @param withNumbers its Yjs client numbers come back too, so that new entries get numbers that are taken elsewhere */
function restored(index: number, withNumbers: boolean): Drawn {
  const numbers = withNumbers ? " with the client numbers that it had" : "";
  return toDevice(index, `is restored from an old copy${numbers}`, (device, witness) => {
    const copy = witness.oldCopyOf(device);
    if (!copy) return witness.rememberCopyOf(device);
    stop(device);
    witness.losesStorage(device);
    device.disk.restore(copy);
    witness.lostStorage(device);
    // What is written out of reach gets numbers that are taken: Yjs takes others only when it hears of them.
    if (withNumbers) device.network.setState("down");
    device.start(withNumbers);
  });
}

/** A second tab of the same browser keeps an entry that this one has not seen, and this one's next write fails. */
function otherTab(index: number, chance: Chance): Drawn {
  const key = chance.one(keys);
  const psi = chance.whole(20, 60);
  const client = chance.whole(1, 0x7fff_ffff);
  return toDevice(index, `has another tab, which sets ${key} to ${psi}`, (device, witness) => {
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
  });
}

function moves(index: number, server: number): Drawn {
  return {
    what: `device-${index} goes to server-${server}`,
    act: ({ devices, servers }) => {
      const next = servers[server];
      if (next) devices[index]?.network.moveTo(next);
    },
  };
}

function serverDies(index: number, forLong: boolean): Drawn {
  return {
    what: forLong ? `server-${index} dies, or starts` : `server-${index} dies and starts, or starts`,
    act: ({ servers }) => {
      const server = servers[index];
      if (!server?.isRunning()) return server?.start();
      server.kill();
      if (!forLong) server.start();
    },
  };
}

function serverFull(index: number, isFull: boolean): Drawn {
  return {
    what: `server-${index} has its disk ${isFull ? "full" : "free"}`,
    act: ({ servers }) => servers[index]?.setFull(isFull),
  };
}

function link(index: number, state: LinkState): Drawn {
  return toLink(index, `has its way to the upstream ${state}`, (way) => way.setState(state));
}

function linkTrouble(index: number, amount: number, cuts: boolean): Drawn {
  const what = `has ${amount * 100} % of the messages to and from its upstream spoiled${cuts ? ", some cut" : ""}`;
  return toLink(index, what, (way) => way.setTrouble(amount, cuts));
}

function toLink(index: number, what: string, act: (network: SimulatedNetwork) => void): Drawn {
  return {
    what: `server-${index} ${what}`,
    act: ({ servers }) => {
      const way = servers[index]?.network;
      if (way) act(way);
    },
  };
}

function stop(device: SimulatedDevice): void {
  device.network.dropAll();
  device.die();
}

/** The device, when it runs, has loaded, and knows the rider of `key`. */
function writable(device: SimulatedDevice, key: string) {
  const team = device.running();
  const rider = key.slice(0, key.indexOf("/"));
  return team?.isLoaded() && settledValue(team.ledger.current(riderKind, rider)) ? team : undefined;
}
