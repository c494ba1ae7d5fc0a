/**
 * One device's way to the pit laptop: a small TCP proxy, whose network passes,
 * is cut, delays, half-opens or truncates.
 */
import { createServer } from "node:net";
import { type Chance, createChance } from "#scenarios/player/chance.ts";
import { type NetworkLine, openNetworkLine } from "./network-line.ts";
import type { NetworkMode } from "./network-mode.ts";

export interface PitNetwork {
  readonly origin: string;
  /** From now on the network does this. */
  turn(mode: NetworkMode): void;
  cut(): void;
  restore(): void;
  close(): Promise<void>;
}

/** A way of its own to `port` on this machine; `chance` draws times and lengths. */
export async function openPitNetwork(port: number, chance: Chance = createChance(1)): Promise<PitNetwork> {
  const lines = new Set<NetworkLine>();
  let mode: NetworkMode = { kind: "pass" };
  const server = createServer({ noDelay: true }, (device) => {
    if (mode.kind === "cut") {
      device.resetAndDestroy();
      return;
    }
    const line = openNetworkLine({ device, port, chance, mode, onEnd: () => lines.delete(line) });
    lines.add(line);
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The proxy has no port.");
  const endAll = (): void => {
    for (const line of lines) line.reset();
  };
  const turn = (next: NetworkMode): void => {
    mode = next;
    if (mode.kind === "cut") endAll();
    else for (const line of lines) line.follow(mode);
  };
  return {
    origin: `http://127.0.0.1:${address.port}`,
    turn,
    cut: () => turn({ kind: "cut" }),
    restore: () => turn({ kind: "pass" }),
    close: async () => {
      endAll();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
