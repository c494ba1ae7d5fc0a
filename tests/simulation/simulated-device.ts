/** A device of the simulation: the real device code on a simulated disk, network and clock; it can die and come back. */
import { monotonicFactory } from "ulid";
import { openTeamDevice, type TeamDevice } from "#client/device/team-device.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Chance } from "./chance.ts";
import type { Mutation } from "./mutation.ts";
import { createSimulatedDisk, type SimulatedDisk } from "./simulated-disk.ts";
import { createSimulatedNetwork, type SimulatedNetwork } from "./simulated-network.ts";
import type { SimulatedServer } from "./simulated-server.ts";
import type { VirtualTime } from "./virtual-time.ts";

export interface SimulatedDevice {
  readonly name: string;
  readonly disk: SimulatedDisk;
  readonly network: SimulatedNetwork;
  /** Absent while the device is off. */
  running(): TeamDevice | undefined;
  /** @param withNumbers with the Yjs client numbers of its last start, as a copy of a running machine would have */
  start(withNumbers?: boolean): void;
  /** The battery is out: writes under way and sockets are gone. */
  die(): void;
}

export interface DeviceContext {
  readonly name: string;
  readonly time: VirtualTime;
  readonly chance: Chance;
  readonly server: SimulatedServer;
  readonly mutation: Mutation | undefined;
  /** It may have fewer sockets than it has documents. */
  readonly fewSockets: boolean;
  /** ms by which its clock is off. */
  readonly clockOffset: number;
}

export function createSimulatedDevice(context: DeviceContext): SimulatedDevice {
  const { name, time, chance, server, mutation, clockOffset, fewSockets } = context;
  const disk = createSimulatedDisk(time, chance, mutation);
  const network = createSimulatedNetwork({ time, chance, server, mutation });
  const newId = monotonicFactory(() => chance.next());
  let running: TeamDevice | undefined;
  let generation = 0;

  let numbers: number[] = [];

  const start = (withNumbers = false): void => {
    if (running) return;
    const taken = withNumbers ? numbers : [];
    const drawn: number[] = [];
    numbers = drawn;
    generation += 1;
    const own = generation;
    running = openTeamDevice({
      storage: disk,
      openSocket: network.openSocket,
      timers: {
        now: () => time.now() + clockOffset,
        after: (ms, act) =>
          time.after(ms, () => {
            if (own === generation) act();
          }),
      },
      random: () => chance.next(),
      clientId: () => {
        const number = taken[drawn.length] ?? chance.whole(1, 0x7fff_ffff);
        drawn.push(number);
        return number;
      },
      // Too few for all documents, so that they take turns.
      ...(fewSockets && { mostSockets: 2 }),
      deviceId: name,
      newId: (moment) => newId(moment),
    });
    running.showRiders("all");
    if (mutation === "last writer wins") settleByClock(running, name);
  };
  return {
    name,
    disk,
    network,
    running: () => running,
    start,
    die: () => {
      if (!running) return;
      generation += 1;
      disk.die();
      running.close();
      running = undefined;
    },
  };
}

/** The fault that the ledger must never have. */
function settleByClock(device: TeamDevice, name: string): void {
  device.ledger.onChange((subjects) => {
    for (const subject of subjects) {
      if (!subject.startsWith("setting:")) continue;
      const key = subject.slice("setting:".length);
      const current = device.ledger.current(settingKind, key);
      if (current.state !== "disputed" || !device.isLoaded()) continue;
      const newest = [...current.claims].sort((a, b) => (a.at < b.at ? 1 : -1))[0];
      if (newest?.value) device.writerFor(name).set(settingKind, key, newest.value, { cause: { type: "by hand" } });
    }
  });
}
