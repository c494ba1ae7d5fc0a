/** A device as the client has it, on Node: its real code, Node's sockets, and a clock that can be set forward. */
import { monotonicFactory } from "ulid";
import { WebSocket } from "ws";
import { webSockets } from "#client/device/connection/socket.ts";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { openTeamDevice, type TeamDevice } from "#client/device/team-device.ts";
import type { Chance } from "#tests/simulation/chance.ts";

export type BenchDevice = {
  readonly team: TeamDevice;
  /** Sets its clock to a moment, from which it goes on; ms since the epoch. */
  setClock(moment: number): void;
  /** The moment (performance.now) at which the first socket opened since `forgetSockets`, and how many have. */
  sockets(): { readonly firstOpened: number | undefined; readonly opened: number };
  forgetSockets(): void;
};

export type BenchDeviceNeeds = {
  readonly id: string;
  readonly port: number;
  readonly clock: number;
  readonly chance: Chance;
  readonly storage?: DeviceStorage;
};

export function openBenchDevice({ id, port, clock, chance, storage }: BenchDeviceNeeds): BenchDevice {
  // Node 20 has no WebSocket of its own; the client takes the browser's.
  globalThis.WebSocket ??= WebSocket as unknown as typeof globalThis.WebSocket;
  let offset = clock - performance.now();
  let firstOpened: number | undefined;
  let opened = 0;
  const newId = monotonicFactory(chance.next);
  const open = webSockets(`ws://127.0.0.1:${port}/sync`);
  const team = openTeamDevice({
    storage: storage ?? createMemoryStorage(),
    openSocket: (document, events) =>
      open(document, {
        ...events,
        onOpen: () => {
          firstOpened ??= performance.now();
          opened += 1;
          events.onOpen();
        },
      }),
    timers: {
      now: () => Math.round(performance.now() + offset),
      after: (ms, act) => {
        const timer = setTimeout(act, ms);
        return () => clearTimeout(timer);
      },
    },
    random: chance.next,
    clientId: () => chance.whole(1, 0x7fff_ffff),
    deviceId: id,
    newId: (moment) => newId(moment),
  });
  return {
    team,
    setClock: (moment) => {
      offset = moment - performance.now();
    },
    sockets: () => ({ firstOpened, opened }),
    forgetSockets: () => {
      firstOpened = undefined;
      opened = 0;
    },
  };
}
