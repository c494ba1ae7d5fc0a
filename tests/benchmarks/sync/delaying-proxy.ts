/** A long way to the server: a TCP proxy that holds every byte back for a while, counts them, and can be cut. */
import { connect, createServer, type Socket } from "node:net";

export type DelayingProxy = {
  readonly port: number;
  /** Bytes that have passed since `restore`, to the server and back. */
  readonly bytes: { readonly up: number; readonly down: number };
  /** Ends what is open and refuses what comes. */
  cut(): void;
  /** Lets everything pass again and counts from zero. */
  restore(): void;
  close(): Promise<void>;
};

/** @param delayMs how long each byte takes, one way */
export async function openDelayingProxy(serverPort: number, delayMs: number): Promise<DelayingProxy> {
  const open = new Set<Socket>();
  const bytes = { up: 0, down: 0 };
  let passing = true;
  const pass = (from: Socket, to: Socket, direction: "up" | "down"): void => {
    open.add(from);
    from.on("data", (piece: Buffer) => {
      bytes[direction] += piece.length;
      setTimeout(() => to.write(piece), delayMs);
    });
    from.on("end", () => setTimeout(() => to.end(), delayMs));
    from.on("error", () => to.destroy());
    from.on("close", () => open.delete(from));
  };
  const endAll = (): void => {
    for (const socket of open) socket.destroy();
  };
  const proxy = createServer((device) => {
    if (!passing) {
      device.destroy();
      return;
    }
    const server = connect(serverPort, "127.0.0.1");
    for (const socket of [device, server]) socket.setNoDelay(true);
    pass(device, server, "up");
    pass(server, device, "down");
  });
  await new Promise<void>((resolve) => proxy.listen(0, "127.0.0.1", resolve));
  const address = proxy.address();
  if (address === null || typeof address === "string") throw new Error("The proxy has no port.");
  return {
    port: address.port,
    bytes,
    cut: () => {
      passing = false;
      endAll();
    },
    restore: () => {
      bytes.up = 0;
      bytes.down = 0;
      passing = true;
    },
    close: async () => {
      endAll();
      await new Promise((resolve) => proxy.close(resolve));
    },
  };
}
