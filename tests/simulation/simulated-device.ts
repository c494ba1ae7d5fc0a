/**
 * A device of the simulation: the real device code on a simulated disk, network and clock; it can die and come back, and
 * it can sleep, as a phone in a pocket does: its timers and sockets are frozen, and then all of it comes at once.
 */
import { monotonicFactory } from "ulid";
import type { OpenSocket } from "#client/device/connection/socket.ts";
import { openTeamDevice, type TeamDevice } from "#client/device/team-device.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { askAfterMs, deadAfterMs } from "#core/protocol/reconnection.ts";
import { settingKind, venueKind } from "#core/weekend/record-kinds.ts";
import type { Chance } from "./chance.ts";
import type { Mutation } from "./mutation.ts";
import { createSimulatedDisk, type SimulatedDisk } from "./simulated-disk.ts";
import { createSimulatedNetwork, type SimulatedNetwork } from "./simulated-network.ts";
import type { SimulatedServer } from "./simulated-server.ts";
import type { VirtualTime } from "./virtual-time.ts";

export interface SimulatedDevice {
  readonly name: string;
  /** It runs a version of the app that does not know what a venue is. */
  readonly isOld: boolean;
  /** It has fewer sockets than documents: one that rests was proven at the server where it was then. */
  readonly takesTurns: boolean;
  readonly disk: SimulatedDisk;
  readonly network: SimulatedNetwork;
  /** Absent while the device is off. */
  running(): TeamDevice | undefined;
  /** @param withNumbers with the Yjs client numbers of its last start, as a copy of a running machine would have */
  start(withNumbers?: boolean): void;
  /** The battery is out: writes under way and sockets are gone. */
  die(): void;
  /** Sleeps so long, and then the page is shown again. */
  sleep(ms: number): void;
  isAsleep(): boolean;
}

export interface DeviceContext {
  readonly name: string;
  readonly isOld: boolean;
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
  const { name, isOld, time, chance, server, mutation, clockOffset, fewSockets } = context;
  const disk = createSimulatedDisk(time, chance, mutation);
  const network = createSimulatedNetwork({ time, chance, server, mutation });
  const newId = monotonicFactory(() => chance.next());
  let running: TeamDevice | undefined;
  let generation = 0;
  let numbers: number[] = [];
  let isAsleep = false;
  let frozen: (() => void)[] = [];

  const whenAwake = (act: () => void): void => {
    if (isAsleep) frozen.push(act);
    else act();
  };
  const wakeUp = (): void => {
    isAsleep = false;
    const acts = frozen;
    frozen = [];
    for (const act of acts) act();
  };
  const openSocket: OpenSocket = (document, events) => {
    let isClosed = false;
    const heard = (act: () => void): void =>
      whenAwake(() => {
        if (!isClosed) act();
      });
    const socket = network.openSocket(document, {
      onOpen: () => heard(events.onOpen),
      onMessage: (message) => heard(() => events.onMessage(message)),
      onClose: (code) => heard(() => events.onClose(code)),
    });
    return {
      send: socket.send,
      close: () => {
        isClosed = true;
        socket.close();
      },
    };
  };

  const start = (withNumbers = false): void => {
    if (running) return;
    network.startAfresh();
    const taken = withNumbers ? numbers : [];
    const drawn: number[] = [];
    numbers = drawn;
    generation += 1;
    const own = generation;
    running = openTeamDevice({
      storage: isOld && mutation === "drop what an old version cannot read" ? readableOnly(disk) : disk,
      openSocket,
      timers: {
        now: () => time.now() + clockOffset,
        after: (ms, act) => {
          if (mutation === "never give up a silent socket" && ms === askAfterMs) return () => {};
          let isOff = false;
          const callOff = time.after(ms, () =>
            whenAwake(() => {
              if (own === generation && !isOff) act();
            }),
          );
          return () => {
            isOff = true;
            callOff();
          };
        },
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
      ...(isOld && { kinds: allKinds.filter(({ kind }) => kind !== venueKind.kind) }),
    });
    running.showRiders("all");
    if (mutation === "last writer wins") settleByClock(running, name);
  };
  return {
    name,
    isOld,
    takesTurns: fewSockets,
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
      isAsleep = false;
      frozen = [];
    },
    isAsleep: () => isAsleep,
    sleep: (ms) => {
      if (!running || isAsleep) return;
      isAsleep = true;
      const own = generation;
      // The server gives up a device that answers no ping.
      if (ms >= deadAfterMs) time.after(deadAfterMs, () => own === generation && isAsleep && network.dropAll());
      time.after(ms, () => {
        if (own !== generation || !isAsleep) return;
        wakeUp();
        running?.wake();
      });
    },
  };
}

/** A disk that keeps nothing of what names a venue. */
function readableOnly(disk: SimulatedDisk): SimulatedDisk {
  const isReadable = (update: Uint8Array): boolean => !Buffer.from(update).includes("venue:");
  return {
    ...disk,
    append: (document, update) => (isReadable(update) ? disk.append(document, update) : Promise.resolve()),
    compact: (document, state) => (isReadable(state) ? disk.compact(document, state) : Promise.resolve()),
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
