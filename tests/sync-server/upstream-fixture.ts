import { expect, vi } from "vitest";
import type { ServerOptions } from "#server/server.ts";
import type { UpdateStore } from "#server/store/update-store.ts";
import { reachUpstream } from "#server/upstream/reach-upstream.ts";
import type { UpstreamPort } from "#server/upstream/upstream-port.ts";
import type { Health } from "#server/web.ts";
import { join } from "./raw-device.ts";
import { numbersInLog, season, serve, type TestServer } from "./server-fixture.ts";

const patience = { timeout: 15_000, interval: 10 };

/** A server with an upstream, which it asks more often than usual so that tests are quick. */
export function serveBelow(
  upstream: { readonly url: string },
  options: Partial<ServerOptions> = {},
): Promise<TestServer> {
  return serve({ ...options, upstream: { port: portTo(upstream), listEveryMs: 100, ...options.upstream } });
}

export function portTo(upstream: { readonly url: string }): UpstreamPort {
  return reachUpstream(new URL(`http://${upstream.url}/`));
}

export function eventually(holds: () => void | Promise<void>): Promise<void> {
  return vi.waitFor(holds, patience);
}

/** Waits until the logs hold exactly these numbers. */
export function eventuallyHold(
  numbers: readonly number[],
  stores: readonly { store: UpdateStore }[],
  document = season,
) {
  return eventually(() => {
    for (const { store } of stores) expect(numbersInLog(store, document)).toEqual(numbers);
  });
}

export async function healthOf(server: { readonly url: string }): Promise<Health> {
  return (await fetch(`http://${server.url}/health`)).json();
}

/** Waits until the server knows that nothing is to be done any more. */
export function eventuallyRests(server: { readonly url: string }) {
  return eventually(async () => {
    expect((await healthOf(server)).upstream).toMatchObject({ isConnected: true, documentsWaiting: 0 });
  });
}

/** Writes an update by a device that leaves when it is acknowledged. */
export async function write(server: { readonly url: string }, update: Uint8Array, document = season): Promise<void> {
  const device = await join(server, document);
  device.sendCatchUp(update);
  await device.next("acknowledgement");
  device.socket.close();
  await device.closed;
}
