import { connect, createServer, type Socket } from "node:net";
import { onTestFinished } from "vitest";

export type ServerWay = {
  /** Host and port at which the server is reached. */
  readonly url: string;
  /** Ends what is open and refuses what comes. */
  cut(): void;
  /** Takes everything and lets nothing through, as Wi-Fi that was left. */
  silence(): void;
  /** From now on new connections pass. */
  restore(): void;
  /** Another server has taken the place of the one at the end. */
  lead(port: number): void;
  /** Bytes that have passed in both directions. */
  readonly passed: number;
};

/** A way of its own to a server on this machine; it ends with the test. */
export async function openWay(serverPort: number): Promise<ServerWay> {
  const open = new Set<Socket>();
  let state: "passing" | "cut" | "silent" = "passing";
  let target = serverPort;
  let passed = 0;
  const proxy = createServer((near) => {
    if (state === "cut") {
      near.destroy();
      return;
    }
    const far = connect(target, "127.0.0.1");
    for (const [socket, other] of [
      [near, far],
      [far, near],
    ] as const) {
      open.add(socket);
      socket.on("error", () => other.destroy());
      socket.on("close", () => {
        open.delete(socket);
        if (state !== "silent") other.destroy();
      });
      socket.on("data", (bytes: Buffer) => {
        if (state === "silent") return;
        passed += bytes.length;
        other.write(bytes);
      });
    }
  });
  const endAll = (): void => {
    for (const socket of open) socket.destroy();
  };
  await new Promise<void>((resolve) => proxy.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => {
    endAll();
    proxy.close();
  });
  const address = proxy.address();
  if (address === null || typeof address === "string") throw new Error("The way has no port.");
  return {
    url: `127.0.0.1:${address.port}`,
    cut() {
      state = "cut";
      endAll();
    },
    silence() {
      state = "silent";
    },
    restore() {
      state = "passing";
      endAll();
    },
    lead(port) {
      target = port;
    },
    get passed() {
      return passed;
    },
  };
}
