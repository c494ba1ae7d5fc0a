import * as encoding from "lib0/encoding";
import { describe, expect, it } from "vitest";
import { closeCode } from "#core/protocol/close-code.ts";
import { maximumPresenceBytes } from "#core/protocol/limits.ts";
import { messageType } from "#core/protocol/message-type.ts";
import { createPresence, maximumPresentDevices, writePresence } from "#server/presence.ts";
import { join, presence, presenceOf, type RawDevice, statesIn } from "./raw-device.ts";
import { season, serve } from "./server-fixture.ts";

const hears = async (device: RawDevice) => statesIn((await device.next("presence")).payload);
const queryPresence = new Uint8Array([messageType.queryAwareness]);

/** Presence of several devices in one payload. */
function payload(...changes: [client: number, clock: number, state: unknown][]): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, changes.length);
  for (const [client, clock, state] of changes) {
    encoding.writeVarUint(encoder, client);
    encoding.writeVarUint(encoder, clock);
    encoding.writeVarString(encoder, JSON.stringify(state));
  }
  return encoding.toUint8Array(encoder);
}

describe("presence", () => {
  it("P20 comes back to its sender and goes to the others", async () => {
    const server = await serve();
    const [anna, ben] = [await join(server), await join(server)];
    anna.send(presenceOf(5, 1, { name: "Anna" }));
    expect(await hears(anna)).toEqual({ 5: { name: "Anna" } });
    expect(await hears(ben)).toEqual({ 5: { name: "Anna" } });
  });

  it("P20 is repeated with each sign of an idle device, so that it hears something", async () => {
    const server = await serve();
    const anna = await join(server);
    for (let clock = 1; clock <= 3; clock++) {
      anna.send(presenceOf(5, clock, { name: "Anna" }));
      expect(await hears(anna)).toEqual({ 5: { name: "Anna" } });
    }
  });

  it("P21 tells a newcomer who is there, and everybody who has gone", async () => {
    const server = await serve();
    const anna = await join(server);
    anna.send(presenceOf(5, 1, { name: "Anna" }));
    await anna.next("presence");
    const ben = await join(server);
    expect(await hears(ben)).toEqual({ 5: { name: "Anna" } });
    ben.send(queryPresence);
    expect(await hears(ben)).toEqual({ 5: { name: "Anna" } });
    anna.socket.terminate();
    expect(await hears(ben)).toEqual({ 5: null });
    const late = await join(server);
    await late.everything();
    expect(late.kinds()).not.toContain("presence");
  });

  it("P22 stays with a device that came back before its old socket ended", async () => {
    const server = await serve();
    const [old, ben] = [await join(server), await join(server)];
    old.send(presenceOf(5, 7, { name: "Anna" }));
    await ben.next("presence");
    const back = await join(server);
    back.send(presenceOf(5, 7, { name: "Anna" }));
    await back.everything();
    old.socket.terminate();
    await old.closed;
    const late = await join(server, season);
    expect(await hears(late)).toEqual({ 5: { name: "Anna" } });
    back.socket.terminate();
    expect(await hears(ben)).toEqual({ 5: null });
  });

  it("P23 is not stored, and is cut off when it names more devices than may be present", async () => {
    const server = await serve();
    const anna = await join(server);
    const crowd = Array.from({ length: maximumPresentDevices + 1 }, (_, n): [number, number, unknown] => [n, 1, {}]);
    anna.send(presence(payload([5, 1, {}])));
    await anna.next("presence");
    anna.send(presence(payload(...crowd)));
    expect((await anna.closed).code).toBe(closeCode.malformedMessage);
    expect(server.store.documents()).toEqual([]);
  });
});

describe("the presence relay", () => {
  it("leaves a device with its owner when another one repeats what it heard", () => {
    const relay = createPresence();
    const [anna, ben] = [{}, {}];
    relay.receive(anna, payload([5, 1, "a"]));
    relay.receive(ben, payload([6, 1, "b"]));
    expect(relay.receive(ben, payload([5, 1, "a"]))).toBe("nothing");
    expect(relay.leave(ben)).toEqual(payload([6, 1, null]));
    expect(relay.everybody()).toEqual(payload([5, 1, "a"]));
  });

  it("takes what is newer, ignores what is older, and removes on null of the same age", () => {
    const relay = createPresence();
    const anna = {};
    relay.receive(anna, payload([5, 3, "a"]));
    expect(relay.receive(anna, payload([5, 2, "old"]))).toBe("nothing");
    expect(relay.receive(anna, payload([5, 2, null]))).toBe("nothing");
    expect(relay.receive(anna, payload([5, 4, "b"]))).toEqual(payload([5, 4, "b"]));
    expect(relay.receive(anna, payload([5, 4, null]))).toEqual(payload([5, 4, null]));
    expect(relay.everybody()).toBeUndefined();
    expect(relay.leave(anna)).toBeUndefined();
  });

  it("has room for so many devices and no more", () => {
    const relay = createPresence();
    for (let client = 0; client < maximumPresentDevices; client++) relay.receive({}, payload([client, 1, {}]));
    expect(relay.receive({}, payload([maximumPresentDevices, 1, {}]))).toBe("nothing");
  });
});

describe("the size of all presence of a document", () => {
  it("P23 stays within that of one message, so that a newcomer and a link between servers can read it", () => {
    const relay = createPresence();
    const owner = {};
    // A number that takes 4 bytes as it comes and 22 as it is written again.
    const swelling = `[${"1e21,".repeat(2000)}0]`;
    for (let client = 1; client <= maximumPresentDevices; client++) {
      relay.receive(owner, writePresence([{ client, clock: 1, state: swelling }]));
    }
    expect(relay.everybody()?.length).toBeLessThanOrEqual(maximumPresenceBytes);
  });

  it("P23 is free again for others when a device that took much of it leaves or says less", () => {
    const relay = createPresence();
    const [greedy, phone] = [{}, {}];
    const large = { name: "x".repeat(maximumPresenceBytes - 100) };
    relay.receive(greedy, payload([1, 1, large]));
    expect(relay.receive(phone, payload([2, 1, { name: "y".repeat(200) }]))).toBe("nothing");
    relay.receive(greedy, payload([1, 2, {}]));
    expect(relay.receive(phone, payload([2, 2, { name: "y".repeat(200) }]))).not.toBe("nothing");
    expect(relay.receive(greedy, payload([1, 3, large]))).toBe("nothing");
    relay.leave(phone);
    expect(relay.receive(greedy, payload([1, 4, large]))).not.toBe("nothing");
  });
});
