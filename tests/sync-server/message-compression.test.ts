import type { IncomingMessage } from "node:http";
import { expect, it } from "vitest";
import WebSocket from "ws";
import { maximumMessageBytes } from "#core/protocol/limits.ts";
import { syncUpdate } from "#server/sync-message.ts";
import { join, RawDevice } from "./raw-device.ts";
import { deviceDocument, numbered, numbersIn, push, season, serve } from "./server-fixture.ts";

const count = 500;
const records = Array.from({ length: count }, (_, n) => numbered(n));

/** A new device that takes everything, and the bytes that came to it over the wire. */
async function takeEverything(url: string, offers: boolean): Promise<{ numbers: number; bytes: number }> {
  const device = new RawDevice(`ws://${url}/sync/${season}`, { perMessageDeflate: offers });
  const response = new Promise<IncomingMessage>((resolve) => device.socket.on("upgrade", resolve));
  await device.open();
  const document = await device.everything();
  return { numbers: numbersIn(document).length, bytes: (await response).socket.bytesRead };
}

it("sends what a new device lacks in a fraction of its bytes, where the device offers compression", async () => {
  const server = await serve();
  const writer = await join(server);
  const update = push(deviceDocument(7), ...records);
  writer.sendUpdate(update);
  await writer.next("acknowledgement");
  const plain = await takeEverything(server.url, false);
  const compressed = await takeEverything(server.url, true);
  expect([plain.numbers, compressed.numbers]).toEqual([count, count]);
  expect(plain.bytes).toBeGreaterThan(update.length);
  expect(compressed.bytes).toBeLessThan(plain.bytes / 5);
});

it("sends a single record as it is, since each device would cost a compression of its own", async () => {
  const server = await serve();
  const writer = await join(server);
  const reader = new RawDevice(`ws://${server.url}/sync/${season}`);
  const response = new Promise<IncomingMessage>((resolve) => reader.socket.on("upgrade", resolve));
  await reader.open();
  await reader.everything();
  const before = (await response).socket.bytesRead;
  const update = push(deviceDocument(7), numbered(1, "x".repeat(2000)));
  writer.sendUpdate(update);
  await reader.next("update");
  expect((await response).socket.bytesRead - before).toBeGreaterThan(update.length);
});

it("P18 closes a socket whose message is too large once it is unpacked with 1009, and goes on", async () => {
  const server = await serve();
  const bomb = await join(server);
  const patient = await join(server);
  bomb.socket.send(new Uint8Array(maximumMessageBytes + 1), { compress: true });
  expect((await bomb.closed).code).toBe(1009);
  patient.send(syncUpdate(push(deviceDocument(7), numbered(1))));
  await patient.next("acknowledgement");
  expect(patient.socket.readyState).toBe(WebSocket.OPEN);
  expect(numbersIn(await patient.everything())).toEqual([1]);
});
