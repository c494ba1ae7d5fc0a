import { connect } from "node:net";
import { describe, expect, it } from "vitest";
import WebSocket from "ws";
import { closeCode } from "#core/protocol/close-code.ts";
import { defaultHeartbeat, type Pulse, startHeartbeat } from "#server/heartbeat.ts";
import { join, presenceOf, RawDevice, statesIn } from "./raw-device.ts";
import { deviceDocument, numbered, numbersInLog, push, season, serve } from "./server-fixture.ts";

const quick = { everyMs: 40, deadAfterMs: 120 };

/** A pulse whose calls are counted; `reached` resolves when one of them has been made so many times. */
function counted() {
  const counts = { ping: 0, terminate: 0 };
  const waiting: { name: keyof typeof counts; times: number; resolve: () => void }[] = [];
  const count = (name: keyof typeof counts) => () => {
    counts[name] += 1;
    for (const wait of waiting) if (counts[wait.name] >= wait.times) wait.resolve();
  };
  const pulse: Pulse = { ping: count("ping"), terminate: count("terminate") };
  const reached = (name: keyof typeof counts, times: number) =>
    new Promise<void>((resolve) => waiting.push({ name, times, resolve }));
  return { counts, pulse, reached };
}

describe("a socket", () => {
  it("P24 is pinged every 2 s and dead after 5 s unless a test says otherwise", () => {
    expect(defaultHeartbeat).toEqual({ everyMs: 2000, deadAfterMs: 5000 });
  });

  it("P24 lives as long as it answers, by the clock that the heartbeat is given", async () => {
    let now = 0;
    const { counts, pulse, reached } = counted();
    const heartbeat = startHeartbeat({ everyMs: 20, deadAfterMs: 100 }, () => now);
    try {
      const alive = heartbeat.watch(pulse);
      await reached("ping", 3);
      now = 90;
      alive();
      now = 180;
      await reached("ping", 6);
      expect(counts.terminate).toBe(0);
      now = 190;
      await reached("terminate", 1);
    } finally {
      heartbeat.stop();
    }
  });

  it("P24 is ended when it stays silent, and leaves the presence; one that answers is not", async () => {
    const server = await serve({ heartbeat: quick });
    const watcher = await join(server);
    const silent = new RawDevice(`ws://${server.url}/sync/${season}`, { autoPong: false });
    await silent.open();
    silent.send(presenceOf(5, 1, { name: "Anna" }));
    expect(statesIn((await watcher.next("presence")).payload)).toEqual({ 5: { name: "Anna" } });
    expect((await silent.closed).code).toBe(1006);
    expect(statesIn((await watcher.next("presence")).payload)).toEqual({ 5: null });
    expect(watcher.socket.readyState).toBe(WebSocket.OPEN);
  });

  it("that breaks off in the middle of a frame or of the opening takes nothing with it", async () => {
    const server = await serve();
    const watcher = await join(server);
    const opening =
      `GET /sync/${season} HTTP/1.1\r\nHost: 127.0.0.1\r\nUpgrade: websocket\r\nConnection: Upgrade\r\n` +
      "Sec-WebSocket-Version: 13\r\nSec-WebSocket-Key: AAAAAAAAAAAAAAAAAAAAAA==\r\n\r\n";
    const halfFrame = Buffer.from([0x82, 0xfe, 0x10, 0x00, 1, 2, 3, 4, 5]);
    const badFrame = Buffer.from([0xff, 0xff, 0xff, 0xff]);
    for (const ending of [[opening.slice(0, 60)], [opening, halfFrame], [opening, badFrame], ["NONSENSE\r\n\r\n"]]) {
      const stream = connect(server.port, "127.0.0.1");
      await new Promise<void>((resolve) => {
        stream.on("error", () => {});
        stream.on("close", () => resolve());
        for (const part of ending) stream.write(part);
        stream.on("data", () => stream.end());
        stream.end();
        stream.resume();
      });
    }
    await watcher.everything();
    expect(server.log.join("\n")).not.toContain("callback failed");
  });
});

describe("a graceful stop", () => {
  it("P25 commits what has arrived and says goodbye to every socket", async () => {
    const server = await serve();
    const [anna, ben] = [await join(server), await join(server, "team")];
    anna.sendUpdate(push(deviceDocument(5), numbered(1)));
    await anna.next("acknowledgement");
    await server.close();
    expect((await anna.closed).code).toBe(closeCode.goingAway);
    expect((await ben.closed).code).toBe(closeCode.goingAway);
    expect(numbersInLog(server.store)).toEqual([1]);
    await expect(new RawDevice(`ws://${server.url}/sync/team`).open()).rejects.toThrow("ECONNREFUSED");
  });

  it("P25 does not wait for a device that does not answer, and may be asked for twice", async () => {
    const server = await serve({ goodbyeMs: 50 });
    const deaf = await join(server);
    deaf.socket.pause();
    await Promise.all([server.close(), server.close()]);
    deaf.socket.resume();
    expect([closeCode.goingAway, 1006]).toContain((await deaf.closed).code);
  });
});
