import { describe, expect, it } from "vitest";
import { documentListSchema } from "#core/protocol/document-list.ts";
import { waitBeforeRetry } from "#core/protocol/reconnection.ts";
import { createLinkPresence } from "#server/upstream/link-presence.ts";
import { openThrough, purposeInUrl, purposeQuery, type SocketPurpose } from "#server/upstream/socket-purpose.ts";
import { presenceOf, statesIn } from "./raw-device.ts";
import { deviceDocument, numbered, push, serve } from "./server-fixture.ts";
import { write } from "./upstream-fixture.ts";

describe("the list of documents", () => {
  it("P35 names each with a position that changes when the document does", async () => {
    const server = await serve();
    const list = async () => documentListSchema.parse(await (await fetch(`http://${server.url}/documents`)).json());
    expect(await list()).toEqual({ documents: [] });
    const document = deviceDocument(5);
    await write(server, push(document, numbered(1)), "team");
    await write(server, push(deviceDocument(6), numbered(2)));
    const first = new Map((await list()).documents.map(({ name, position }) => [name, position]));
    expect([...first.keys()].sort()).toEqual(["rider/anna/2031", "team"]);
    await write(server, push(document, numbered(3)), "team");
    const second = new Map((await list()).documents.map(({ name, position }) => [name, position]));
    expect(second.get("team")).toBeGreaterThan(first.get("team") ?? Number.NaN);
    expect(second.get("rider/anna/2031")).toBe(first.get("rider/anna/2031"));
  });
});

describe("the purpose of a socket", () => {
  const purposes: SocketPurpose[] = [
    { type: "device" },
    { type: "catch-up" },
    { type: "open", through: ["a1"] },
    { type: "open", through: ["a1", "b2", "c3"] },
  ];

  it.each(purposes)("P34 %j is read as it was written", (purpose) => {
    expect(purposeInUrl(`/sync/team${purposeQuery(purpose)}`)).toEqual(purpose);
  });

  it.each(["", "?link", "?link=other", "?link=open", "?link=open&through=", "?link=open&through=A,b", "?through=a"])(
    "P34 that says %j is a device's",
    (query) => {
      expect(purposeInUrl(`/sync/team${query}`)).toEqual({ type: "device" });
    },
  );

  it("P40 with too long a row of servers keeps nothing open", () => {
    const through = Array.from({ length: 17 }, (_, n) => `server${n}`);
    expect(purposeInUrl(`/sync/team${purposeQuery({ type: "open", through })}`)).toEqual({ type: "catch-up" });
  });

  const open = (...through: string[]): SocketPurpose => ({ type: "open", through });
  const reasons: [string, SocketPurpose[], string[] | undefined][] = [
    ["nobody", [], undefined],
    ["a server that catches up", [{ type: "catch-up" }], undefined],
    ["a device", [{ type: "device" }], ["self"]],
    ["a device beside a server", [open("a"), { type: "device" }], ["self"]],
    ["servers below", [open("b", "c"), open("a", "c")], ["self", "a", "b", "c"]],
    ["this server itself", [open("self")], undefined],
    ["this server round a ring", [open("c", "b", "self")], undefined],
    ["a ring and a server below", [open("c", "self"), open("d")], ["self", "d"]],
  ];
  it.each(reasons)("P40 makes a document open for %s accordingly", (_who, visitors, expected) => {
    expect(openThrough("self", visitors)).toEqual(expected);
  });
});

describe("presence on a link", () => {
  const payload = (...parameters: Parameters<typeof presenceOf>) => presenceOf(...parameters).slice(2);
  const shown = (passed: ReturnType<ReturnType<typeof createLinkPresence>["pass"]>) =>
    typeof passed === "string" ? passed : statesIn(passed);

  it("P38 P40 lets each state and each going pass once, in whatever direction, and no state after its going", () => {
    const link = createLinkPresence();
    expect(shown(link.pass(payload(5, 1, {})))).toEqual({ 5: {} });
    expect(shown(link.pass(payload(5, 1, {})))).toBe("nothing");
    expect(shown(link.pass(payload(5, 2, { lap: 2 })))).toEqual({ 5: { lap: 2 } });
    expect(shown(link.pass(payload(5, 1, {})))).toBe("nothing");
    expect(shown(link.pass(payload(5, 2, null)))).toEqual({ 5: null });
    expect(shown(link.pass(payload(5, 2, null)))).toBe("nothing");
    expect(shown(link.pass(payload(5, 2, { lap: 2 })))).toBe("nothing");
    expect(shown(link.pass(payload(5, 3, {})))).toEqual({ 5: {} });
  });

  it("P38 keeps to a bound however many devices a hostile server invents", () => {
    const link = createLinkPresence();
    for (let client = 1; client <= 2001; client++) link.pass(payload(client, 1, {}));
    expect(shown(link.pass(payload(1, 1, {})))).toEqual({ 1: {} });
    expect(shown(link.pass(payload(2001, 1, {})))).toBe("nothing");
  });

  it("P42 tells what cannot be read", () => {
    expect(createLinkPresence().pass(new Uint8Array([9, 9]))).toBe("malformed");
  });
});

it("P41 draws each wait below a bound that doubles up to three seconds", () => {
  const almostOne = () => 1 - Number.EPSILON;
  expect([1, 2, 3, 4, 5, 50].map((failures) => Math.round(waitBeforeRetry(failures, almostOne)))).toEqual([
    300, 600, 1200, 2400, 3000, 3000,
  ]);
  expect(waitBeforeRetry(7, () => 0)).toBe(0);
});
