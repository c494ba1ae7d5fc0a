/** Hand-off by codes: what one device has, and the other's answer to it. */
import fc from "fast-check";
import * as decoding from "lib0/decoding";
import { describe, expect, test } from "vitest";
import * as Y from "yjs";
import { readAnswer, writeAnswer } from "#client/device/hand-off/codes/answer.ts";
import { payloadBytes, sessionOf } from "#client/device/hand-off/codes/code-frame.ts";
import { readHoldings, writeHoldings } from "#client/device/hand-off/codes/holdings.ts";
import { allowedPlainBytes, packContent, unpackContent } from "#client/device/hand-off/codes/packed-content.ts";
import type { TeamDevice } from "#client/device/team-device.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { recordOf, riderDocument, stateOf, teamDocuments } from "#tests/client/device/hand-off-team.ts";
import { deviceWith, emptyDevice, KEY, setting } from "./unreachable-devices.ts";

const holdingsOf = async (device: TeamDevice): Promise<Uint8Array> => (await device.codes()).holdings();
const answerOf = async (device: TeamDevice, holdings: Uint8Array) =>
  (await device.codes()).answer(holdings, "Kim Larch");

/** What `from` answers to what `to` has; it has news. */
async function answered(from: TeamDevice, to: TeamDevice): Promise<{ content: Uint8Array; entries: number }> {
  const made = await answerOf(from, await holdingsOf(to));
  if (!made.ok) throw new Error(made.problem.type);
  return made;
}

async function bundleOf(device: TeamDevice, content: Uint8Array) {
  const reading = await (await device.codes()).readAnswer(content);
  if (!reading.ok) throw new Error(reading.problem.type);
  return reading.bundle;
}

async function refusalOf(device: TeamDevice, content: Uint8Array): Promise<string> {
  const { revision } = device.ledger;
  const reading = await (await device.codes()).readAnswer(content);
  expect(device.ledger.revision).toBe(revision);
  return reading.ok ? "none" : reading.problem.type;
}

const pressure = (device: TeamDevice) => settledValue(device.ledger.current(settingKind, KEY));

describe("an answer", () => {
  test("brings one change in one code, described before it is merged, and saved when it says so", async () => {
    const pit = await deviceWith("pit");
    const phone = await deviceWith("phone");
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    const { content, entries } = await answered(pit, phone);
    expect(entries).toBe(1);
    expect(content.length).toBeLessThan(payloadBytes);
    const bundle = await bundleOf(phone, content);
    expect(bundle.header).toMatchObject({ madeBy: "Kim Larch", device: "pit" });
    const news = { records: 1, people: [{ name: "Kim Larch", records: 1 }] };
    expect(await phone.describeBundle(bundle)).toMatchObject({ ok: true, news });
    expect(pressure(phone)).toEqual(setting(62));
    expect(await phone.importBundle(bundle)).toMatchObject({ ok: true, news, saved: true });
    expect(pressure(phone)).toEqual(setting(64));
    expect(await phone.importBundle(bundle)).toMatchObject({ ok: true, news: { records: 0 } });
  });

  test("brings a new member of the team with his name, though nothing else in it is known", async () => {
    const pit = await deviceWith("pit");
    const phone = await deviceWith("phone");
    pit.writerFor("kim").set(riderKind, "ash", { name: "Ash", mass: { value: 70, unit: "kg" }, bike: "ash-1" });
    const bundle = await bundleOf(phone, (await answered(pit, phone)).content);
    expect(await phone.importBundle(bundle)).toMatchObject({ ok: true, news: { records: 1 } });
    expect(phone.ledger.keys(riderKind)).toEqual(["alder", "ash"]);
  });

  test("brings everything to a device that has nothing, seasons that it has not heard of included", async () => {
    const pit = await deviceWith("pit");
    const phone = emptyDevice("phone");
    const { content, entries } = await answered(pit, phone);
    expect(entries).toBe(3);
    await phone.importBundle(await bundleOf(phone, content));
    expect(pressure(phone)).toEqual(setting(62));
    const again = await answerOf(pit, await holdingsOf(phone));
    expect(again).toMatchObject({ ok: false, problem: { type: "nothing new" } });
  });

  test("leaves out the seasons of riders that the other device does not show", async () => {
    const pit = await deviceWith("pit");
    for (const [shows, entries] of [
      [[], 2],
      [["birch"], 2],
      [["alder"], 3],
    ] as const) {
      expect((await answered(pit, emptyDevice("phone", shows))).entries).toBe(entries);
    }
  });

  test("both ways leaves what both set apart as a dispute on both", async () => {
    const pit = await deviceWith("pit");
    const phone = await deviceWith("phone");
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    phone.writerFor("rowan").set(settingKind, KEY, setting(58));
    await phone.importBundle(await bundleOf(phone, (await answered(pit, phone)).content));
    await pit.importBundle(await bundleOf(pit, (await answered(phone, pit)).content));
    expect(pit.ledger.current(settingKind, KEY)).toMatchObject({ state: "disputed", claims: [{}, {}] });
    expect(phone.ledger.current(settingKind, KEY)).toEqual(pit.ledger.current(settingKind, KEY));
  });

  test("is still taken when the device has written something since it showed what it has", async () => {
    const pit = await deviceWith("pit");
    const phone = await deviceWith("phone");
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    const { content } = await answered(pit, phone);
    phone.writerFor("rowan").set(settingKind, KEY, setting(58));
    expect(await phone.importBundle(await bundleOf(phone, content))).toMatchObject({ ok: true, news: { records: 1 } });
  });

  test("is still taken after a restart, as long as nothing has changed", async () => {
    const pit = await deviceWith("pit");
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    const { content } = await answered(pit, await deviceWith("phone"));
    await bundleOf(await deviceWith("phone"), content);
  });
});

describe("no answer is made", () => {
  test("to a device of another team, or by one without a team", async () => {
    const pit = await deviceWith("pit");
    const other = await deviceWith("other", [
      { name: "team", update: stateOf([recordOf("member:ash", { name: "Ash", role: "rider" }, 5)], 21) },
    ]);
    const made = await answerOf(pit, await holdingsOf(other));
    expect(made).toMatchObject({ ok: false, problem: { type: "another team" } });
    const nothing = await answerOf(emptyDevice("phone"), await holdingsOf(pit));
    expect(nothing).toMatchObject({ ok: false, problem: { type: "nothing here" } });
  });

  test("to bytes that say nothing that a device could have", async () => {
    const pit = await deviceWith("pit");
    const codes = await pit.codes();
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 200 }), async (bytes) => {
        const packed = packContent((encoder) => {
          encoder.bufs.push(bytes);
        });
        expect((await codes.answer(bytes)).ok).toBe(false);
        if ((await codes.answer(packed)).ok) expect(readHoldings(packed)).toBeDefined();
      }),
      { numRuns: 500 },
    );
  });

  test("to a device that holds something else under the same numbers: it would be told that it has everything", async () => {
    const pit = await deviceWith("pit");
    const other = stateOf([recordOf(`setting:${KEY}`, setting(70), 9)], 12);
    const twin = await deviceWith("twin", [...teamDocuments().slice(0, 1), { name: riderDocument, update: other }]);
    expect(await answerOf(pit, await holdingsOf(twin))).toMatchObject({ ok: false, problem: { type: "differs" } });
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    expect(await answerOf(pit, await holdingsOf(twin))).toMatchObject({ ok: false, problem: { type: "differs" } });
  });

  test("beyond what there is, whatever clocks the other device claims", async () => {
    const pit = await deviceWith("pit");
    const vector = Y.encodeStateVector(
      new Map([
        [11, 2 ** 40],
        [12, 0],
      ]),
    );
    const digest = new Uint8Array(32);
    const claimed = writeHoldings("all", [
      { name: "team", vector, digest },
      { name: riderDocument, vector, digest },
    ]);
    expect(await answerOf(pit, claimed)).toMatchObject({ ok: true, entries: 1 });
  });
});

describe("an answer is refused, and nothing changes, when", () => {
  const at = "2026-05-30T10:30:00.000Z";
  const forged = async (device: TeamDevice, documents = teamDocuments(), facts = {}): Promise<Uint8Array> =>
    writeAnswer({ to: sessionOf(await holdingsOf(device)), device: "pit", at, documents, ...facts });

  test("it answers another device", async () => {
    const pit = await deviceWith("pit");
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    const { content } = await answered(pit, emptyDevice("phone"));
    expect(await refusalOf(await deviceWith("tablet"), content)).toBe("another device");
  });

  test("it builds on entries that are not here", async () => {
    const phone = await deviceWith("phone");
    const ydoc = new Y.Doc();
    ydoc.getArray("records").push([recordOf(`setting:${KEY}`, setting(70), 9)]);
    const before = Y.encodeStateVector(ydoc);
    ydoc.getArray("records").push([recordOf(`setting:${KEY}`, setting(71), 10)]);
    const update = Y.encodeStateAsUpdate(ydoc, before);
    expect(await refusalOf(phone, await forged(phone, [{ name: riderDocument, update }]))).toBe("refused document");
  });

  test("it holds something else than records, or of something that is no document", async () => {
    const phone = await deviceWith("phone");
    const ydoc = new Y.Doc();
    ydoc.getMap("settings").set("fork", 62);
    const update = Y.encodeStateAsUpdate(ydoc);
    const refusal = async (name: string) => refusalOf(phone, await forged(phone, [{ name, update }]));
    expect(await refusal(riderDocument)).toBe("refused document");
    expect(await refusal("team")).toBe("refused document");
    expect(await refusal("rider/../2026")).toBe("unknown document");
  });

  test("it names a document twice, or no moment", async () => {
    const phone = await deviceWith("phone");
    const twice = [...teamDocuments(), ...teamDocuments()];
    expect(await refusalOf(phone, await forged(phone, twice))).toBe("damaged");
    expect(await refusalOf(phone, await forged(phone, teamDocuments(), { at: "soon" }))).toBe("damaged");
  });

  test("it holds newer records", async () => {
    const newer = packContent((encoder) => void encoder.bufs.push(new Uint8Array([2, 1, 2, 3])));
    expect(await refusalOf(await deviceWith("phone"), newer)).toBe("newer version");
  });

  test("it is of any bytes", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(readAnswer(bytes).ok).toBe(false);
        readAnswer(packContent((encoder) => void encoder.bufs.push(bytes)));
        readHoldings(packContent((encoder) => void encoder.bufs.push(bytes)));
      }),
      { numRuns: 1000 },
    );
  });

  test("it swells to more than is allowed, however small it came", () => {
    const zeros = (bytes: number) => packContent((encoder) => void encoder.bufs.push(new Uint8Array(bytes)));
    const read = (content: Uint8Array) => unpackContent(content, decoding.readTailAsUint8Array)?.length;
    expect(zeros(allowedPlainBytes + 1).length).toBeLessThan(10_000);
    expect(read(zeros(allowedPlainBytes))).toBe(allowedPlainBytes);
    expect(read(zeros(allowedPlainBytes + 1))).toBeUndefined();
    expect(readAnswer(zeros(allowedPlainBytes + 1))).toMatchObject({ ok: false, problem: { type: "damaged" } });
  });
});
