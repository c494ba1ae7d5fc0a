import { request } from "node:http";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { closeCode } from "#core/protocol/close-code.ts";
import { syncStep1 } from "#server/sync-message.ts";
import { join, RawDevice } from "./raw-device.ts";
import { deviceDocument, numbered, numbersIn, numbersInLog, push, season, serve } from "./server-fixture.ts";

describe("joining", () => {
  it("P2 asks for what the log lacks", async () => {
    const server = await serve();
    const document = deviceDocument(5);
    server.store.append([{ document: season, update: push(document, numbered(1), numbered(2)) }]);
    const device = await new RawDevice(`ws://${server.url}/sync/${season}`).open();
    const { stateVector } = await device.next("step1");
    expect(Y.decodeStateVector(stateVector)).toEqual(new Map([[5, 2]]));
  });

  it("P3 answers with what is beyond the state vector, then tells what the log holds", async () => {
    const server = await serve();
    const document = deviceDocument(5);
    server.store.append([{ document: season, update: push(document, numbered(1), numbered(2)) }]);
    const behind = new Y.Doc();
    Y.applyUpdate(behind, Y.encodeStateAsUpdate(document));
    server.store.append([{ document: season, update: push(document, numbered(3)) }]);
    const device = await join(server);
    device.send(syncStep1(Y.encodeStateVector(behind)));
    const { update } = await device.next("step2");
    expect(Y.decodeUpdate(update).structs.map(({ id }) => id.clock)).toEqual([2]);
    Y.applyUpdate(behind, update);
    expect(numbersIn(behind)).toEqual([1, 2, 3]);
    expect((await device.next("acknowledgement")).stateVector).toEqual(new Map([[5, 3]]));
  });

  it.each([
    "nowhere",
    "team/",
    "team/extra",
    "rider/anna",
    "rider/anna/31",
    "rider//2031",
    "rider/anna/2031/more",
    "rider/..%2f..%2fetc/2031",
    "..%2f..%2fetc%2fpasswd",
    "%00",
    "%",
    "%e0%a4%a",
    "te%61m%20",
    "",
    "TEAM",
    "a".repeat(5000),
  ])("P4 closes /sync/%s, which names no document", async (name) => {
    const server = await serve();
    const device = await new RawDevice(`ws://${server.url}/sync/${name}`).open();
    expect(await device.closed).toEqual({ code: closeCode.unknownDocument, reason: "There is no such document." });
    expect(device.heard).toEqual([]);
    expect(server.store.documents()).toEqual([]);
  });

  it.each(["rider/anna/2031", "rider%2Fanna%2F2031", "rider/%61nna/2031?token=1"])(
    "P4 takes /sync/%s as one and the same document",
    async (name) => {
      const server = await serve();
      server.store.append([{ document: season, update: push(deviceDocument(5), numbered(7)) }]);
      const device = await join(server, name);
      expect(numbersIn(await device.everything())).toEqual([7]);
    },
  );

  it.each([
    ["a page of another site", { origin: "https://elsewhere.example" }],
    ["a name that somebody lets point to loopback", { headers: { host: "elsewhere.example" } }],
    ["a page without an origin of its own", { origin: "null" }],
  ])("P5 refuses %s with 403", async (_who, options) => {
    const server = await serve();
    const device = new RawDevice(`ws://${server.url}/sync/${season}`, options);
    await expect(device.open()).rejects.toThrow("403");
  });

  it("P5 lets a page of this machine in, whatever its port", async () => {
    const server = await serve();
    await new RawDevice(`ws://${server.url}/sync/${season}`, { origin: "http://localhost:5173" }).open();
  });

  it("P5 answers a plain request of another host with 403 and nothing of the client", async () => {
    const server = await serve();
    const status = await new Promise((resolve, reject) => {
      const headers = { host: "elsewhere.example" };
      request({ host: "127.0.0.1", port: server.port, path: "/health", headers }, (response) => {
        response.resume();
        resolve(response.statusCode);
      })
        .on("error", reject)
        .end();
    });
    expect(status).toBe(403);
  });

  it.each(["/", "/synchronous/team", "/health"])("P5 refuses a socket at %s with 404", async (path) => {
    const server = await serve();
    await expect(new RawDevice(`ws://${server.url}${path}`).open()).rejects.toThrow("404");
  });

  it("P6 turns one socket too many away, and lets the next in when one has gone", async () => {
    const server = await serve({ maximumConnections: 1 });
    const first = await join(server);
    const second = await new RawDevice(`ws://${server.url}/sync/${season}`).open();
    expect((await second.closed).code).toBe(closeCode.overloaded);
    first.socket.close();
    await first.closed;
    await join(server);
  });

  it("gives a document free when its last device leaves, and reads it from the log again", async () => {
    const server = await serve();
    const device = await join(server);
    device.sendUpdate(push(deviceDocument(5), numbered(1)));
    await device.next("acknowledgement");
    device.socket.close();
    await device.closed;
    const later = await join(server, "team");
    await later.everything();
    expect(await (await fetch(`http://${server.url}/health`)).json()).toMatchObject({ documents: 1, connections: 1 });
    expect(numbersIn(await (await join(server)).everything())).toEqual([1]);
    expect(numbersInLog(server.store)).toEqual([1]);
  });
});
