import * as fc from "fast-check";
import { describe, expect, it } from "vitest";
import { closeCode } from "#core/protocol/close-code.ts";
import { budgetBytesPerMessage, maximumMessageBytes } from "#core/protocol/limits.ts";
import { createByteBudget, defaultByteRate } from "#server/byte-budget.ts";
import { join, RawDevice } from "./raw-device.ts";
import { deviceDocument, numbered, numbersInLog, push, season, serve } from "./server-fixture.ts";

const secondMs = 1000;

describe("the byte budget of a socket", () => {
  it("P27 is 32 MiB at once and 4 MiB a second, which is room for the largest message", () => {
    expect(defaultByteRate).toEqual({ bytesPerSecond: 4 * 2 ** 20, burstBytes: 32 * 2 ** 20 });
    expect(createByteBudget(defaultByteRate, () => 0).spend(maximumMessageBytes)).toBe(true);
  });

  it("P27 is spent at once or not, fills with time, and never above what may be sent at once", () => {
    let nowMs = 0;
    const budget = createByteBudget({ bytesPerSecond: 100, burstBytes: 1000 }, () => nowMs);
    const spend = (bytes: number) => budget.spend(bytes - budgetBytesPerMessage);
    expect(spend(1001)).toBe(false);
    expect(spend(1000)).toBe(true);
    expect(spend(100)).toBe(false);
    nowMs += secondMs;
    expect(spend(101)).toBe(false);
    expect(spend(100)).toBe(true);
    nowMs += 3600 * secondMs;
    expect(spend(1001)).toBe(false);
    expect(spend(1000)).toBe(true);
  });

  it("P27 lets no more through than the burst and the rate, whatever the sizes and times", () => {
    const steps = fc.array(fc.record({ bytes: fc.nat(2000), waitMs: fc.nat(3000) }), { maxLength: 100 });
    const rate = { bytesPerSecond: 500, burstBytes: 1500 };
    fc.assert(
      fc.property(steps, (sent) => {
        let nowMs = 0;
        let through = 0;
        const budget = createByteBudget(rate, () => nowMs);
        for (const { bytes, waitMs } of sent) {
          nowMs += waitMs;
          if (budget.spend(bytes)) through += bytes + budgetBytesPerMessage;
          expect(through).toBeLessThanOrEqual(rate.burstBytes + (rate.bytesPerSecond * nowMs) / secondMs + 1e-6);
        }
      }),
    );
  });

  it("P27 takes what is within it, does not take what is beyond, and leaves other sockets alone", async () => {
    const server = await serve({ byteRate: { bytesPerSecond: 0.001, burstBytes: 1000 } });
    const [hasty, calm] = [await join(server), await join(server)];
    const document = deviceDocument(5);
    hasty.sendUpdate(push(document, numbered(1)));
    await hasty.next("acknowledgement");
    await calm.next("update");
    await calm.next("acknowledgement");
    hasty.sendUpdate(push(document, numbered(2, "x".repeat(1000))));
    hasty.sendUpdate(push(document, numbered(3)));
    expect(await hasty.closed).toEqual({
      code: closeCode.overloaded,
      reason: "This device sends more than the server takes at a time.",
    });
    expect(numbersInLog(server.store)).toEqual([1]);
    calm.sendUpdate(push(deviceDocument(6), numbered(4)));
    await calm.next("acknowledgement");
    expect(numbersInLog(server.store)).toEqual([1, 4]);
  });

  it("P27 has a price for tiny messages too", async () => {
    const server = await serve({ byteRate: { bytesPerSecond: 0.001, burstBytes: 100 * (budgetBytesPerMessage + 1) } });
    const chatty = await join(server);
    const queryPresence = new Uint8Array([3]);
    for (let count = 0; count < 100; count++) chatty.send(queryPresence);
    chatty.send(queryPresence);
    expect((await chatty.closed).code).toBe(closeCode.overloaded);
  });

  it("P27 ends a socket that was told to close and goes on sending", async () => {
    const server = await serve({
      byteRate: { bytesPerSecond: 0.001, burstBytes: 100 },
      heartbeat: { everyMs: 40, deadAfterMs: 120 },
    });
    const stubborn = await join(server);
    // Reads nothing more, so that it never answers the close frame.
    stubborn.socket.pause();
    const flood = setInterval(() => stubborn.send(new Uint8Array(200)), 5);
    try {
      await expect.poll(() => server.log.join("\n"), { timeout: 10_000 }).toContain("socket is silent");
      const { connections } = await (await fetch(`http://${server.url}/health`)).json();
      expect(connections).toBe(0);
    } finally {
      clearInterval(flood);
    }
  });
});

describe("the limit of open documents", () => {
  it("P28 turns a device for one document too many away, and lets it in when another is free", async () => {
    const server = await serve({ maximumDocuments: 2 });
    const [first, second] = [await join(server), await join(server, "team")];
    const third = await new RawDevice(`ws://${server.url}/sync/rider/ben/2031`).open();
    expect(await third.closed).toEqual({ code: closeCode.overloaded, reason: "Too many documents are open." });
    expect(third.heard).toEqual([]);
    await join(server, season);
    second.socket.close();
    await second.closed;
    await join(server, "rider/ben/2031");
    await first.everything();
  });
});
