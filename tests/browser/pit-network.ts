/**
 * One device's way to the pit laptop: a small TCP proxy that can be cut. A cut
 * ends what is open and refuses what comes, as a router that lost its power.
 */
import { connect, createServer, type Socket } from "node:net";

export interface PitNetwork {
  readonly origin: string;
  cut(): void;
  restore(): void;
  close(): Promise<void>;
}

/** A way of its own to `port` on this machine. */
export async function openPitNetwork(port: number): Promise<PitNetwork> {
  const open = new Set<Socket>();
  let passing = true;
  const server = createServer((device) => {
    if (!passing) {
      device.destroy();
      return;
    }
    const laptop = connect(port, "127.0.0.1");
    for (const [socket, other] of [
      [device, laptop],
      [laptop, device],
    ] as const) {
      open.add(socket);
      socket.on("error", () => other.destroy());
      socket.on("close", () => {
        open.delete(socket);
        other.destroy();
      });
      socket.pipe(other);
    }
  });
  await new Promise<void>((resolve) => server.listen(0, "127.0.0.1", resolve));
  const address = server.address();
  if (address === null || typeof address === "string") throw new Error("The proxy has no port.");
  const endAll = (): void => {
    for (const socket of open) socket.destroy();
  };
  return {
    origin: `http://127.0.0.1:${address.port}`,
    cut: () => {
      passing = false;
      endAll();
    },
    restore: () => {
      passing = true;
    },
    close: async () => {
      endAll();
      await new Promise((resolve) => server.close(resolve));
    },
  };
}
