/** Hand-off between devices that share no network. */
import { monotonicFactory } from "ulid";
import { afterEach, describe, expect, test, vi } from "vitest";
import type { Bundle, NamedUpdate } from "#client/device/hand-off/bundle.ts";
import { makeBundle } from "#client/device/hand-off/make-bundle.ts";
import { readBundle } from "#client/device/hand-off/read-bundle.ts";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { openTeamDevice, type TeamDevice } from "#client/device/team-device.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { memberKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { recordOf, riderDocument, stateOf, teamDocuments, teamRecords } from "./hand-off-team.ts";

const KEY = "alder/alder-1/fork.main-pressure";
const setting = (psi: number): Setting => ({ quantity: { value: psi, unit: "psi" }, standing: "on the bike" });
const MORNING = Date.parse("2026-05-30T11:00:00.000Z");

let devices: TeamDevice[] = [];
let clientId = 100;

/** A device that reaches no server; its timers never fire, since nothing in a hand-off waits for time. */
function device(id: string, storage: DeviceStorage = createMemoryStorage(), shows: "all" | readonly string[] = "all") {
  const draw = devices.length / 32;
  const newId = monotonicFactory(() => draw);
  const opened = openTeamDevice({
    storage,
    openSocket: () => ({ send: () => {}, close: () => {} }),
    timers: { now: () => MORNING, after: () => () => {} },
    random: () => 0.5,
    clientId: () => clientId++,
    deviceId: id,
    newId: (moment) => newId(moment),
  });
  opened.showRiders(shows);
  devices.push(opened);
  return opened;
}

function bundleOf(documents: readonly NamedUpdate[]): Bundle {
  const made = makeBundle({ documents, device: "pit", at: "2026-05-30T10:30:00.000Z" });
  const reading = made.ok ? readBundle(made.bytes) : made;
  if (!reading.ok) throw new Error(reading.problem.type);
  return reading.bundle;
}

/** What a device exports, as another one reads it. */
async function exported(from: TeamDevice): Promise<Bundle> {
  const made = await from.exportBundle("all", "Kim Larch");
  const reading = made.ok ? readBundle(made.bytes) : made;
  if (!reading.ok) throw new Error(reading.problem.type);
  return reading.bundle;
}

async function filled(
  id: string,
  storage?: DeviceStorage,
  shows: "all" | readonly string[] = "all",
): Promise<TeamDevice> {
  const opened = device(id, storage, shows);
  const merged = await opened.importBundle(bundleOf(teamDocuments()));
  expect(merged.ok).toBe(true);
  await vi.waitFor(() => expect(opened.isLoaded()).toBe(true));
  return opened;
}

const mainPressure = (opened: TeamDevice) => opened.ledger.current(settingKind, KEY);

afterEach(() => {
  for (const opened of devices) opened.close();
  devices = [];
});

describe("a file handed over", () => {
  test("brings a whole team to a device that has nothing, and is on its disk when it says so", async () => {
    const storage = createMemoryStorage();
    const opened = device("phone", storage);
    expect(await opened.importBundle(bundleOf(teamDocuments()))).toMatchObject({
      ok: true,
      saved: true,
      news: { records: 3, people: [{ name: "Kim Larch", records: 3 }] },
    });
    expect(settledValue(mainPressure(opened))).toEqual(setting(62));
    const again = device("phone", storage);
    await vi.waitFor(() => expect(settledValue(mainPressure(again))).toEqual(setting(62)));
  });

  test("says how many entries are new, whose, and since when, before anything is merged", async () => {
    const pit = await filled("pit");
    const phone = await filled("phone");
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    const bundle = await exported(pit);
    const at = new Date(MORNING).toISOString();
    const news = { records: 1, people: [{ name: "Kim Larch", records: 1 }], first: at, last: at };
    expect(await phone.describeBundle(bundle)).toEqual({ ok: true, news });
    expect(settledValue(mainPressure(phone))).toEqual(setting(62));
    expect(await phone.importBundle(bundle)).toEqual({ ok: true, news, saved: true });
    expect(settledValue(mainPressure(phone))).toEqual(setting(64));
  });

  test("changes nothing the second time, and nothing is new in it", async () => {
    const pit = await filled("pit");
    const bundle = await exported(pit);
    const phone = await filled("phone");
    await phone.importBundle(bundle);
    const { revision, size } = phone.ledger;
    const state = await exported(phone);
    expect(await phone.describeBundle(bundle)).toEqual({ ok: true, news: { records: 0, people: [] } });
    expect(await phone.importBundle(bundle)).toMatchObject({ ok: true, news: { records: 0 } });
    expect([phone.ledger.revision, phone.ledger.size]).toEqual([revision, size]);
    expect((await exported(phone)).documents).toEqual(state.documents);
  });

  test("leaves what both set apart as a dispute on both", async () => {
    const pit = await filled("pit");
    const phone = await filled("phone");
    pit.writerFor("kim").set(settingKind, KEY, setting(64));
    phone.writerFor("rowan").set(settingKind, KEY, setting(58));
    const [fromPit, fromPhone] = [await exported(pit), await exported(phone)];
    await pit.importBundle(fromPhone);
    await phone.importBundle(fromPit);
    expect(mainPressure(pit)).toMatchObject({ state: "disputed", claims: [{}, {}] });
    expect(mainPressure(phone)).toEqual(mainPressure(pit));
  });

  test("is compared with documents on the disk that are not open, and opens only those with something new", async () => {
    const storage = createMemoryStorage();
    await storage.append(riderDocument, teamDocuments()[1]?.update ?? new Uint8Array());
    const phone = await filled("phone", storage, []);
    expect(mainPressure(phone).state).toBe("absent");
    expect(await phone.describeBundle(bundleOf(teamDocuments()))).toMatchObject({ ok: true, news: { records: 0 } });
    const later = recordOf(`setting:${KEY}`, setting(66), 40);
    const more = { name: riderDocument, update: stateOf([later], 14) };
    const merged = await phone.importBundle(bundleOf([...teamDocuments().slice(0, 1), more]));
    expect(merged).toMatchObject({ ok: true, news: { records: 1 } });
    expect(phone.ledger.record(later.id)).toEqual(later);
    expect(mainPressure(phone).state).toBe("disputed");
  });
});

describe("what a phone took in for others", () => {
  test("is passed on after a restart, though the phone does not show it", async () => {
    const storage = createMemoryStorage();
    (await filled("phone", storage, [])).close();
    const again = device("phone", storage, []);
    await vi.waitFor(() => expect(again.isLoaded()).toBe(true));
    const names = (await exported(again)).documents.map(({ name }) => name);
    expect(names).toContain(riderDocument);
  });

  test("is opened again at the next start, so that it gets to the server", async () => {
    const storage = createMemoryStorage();
    const first = await filled("phone", storage, []);
    expect(settledValue(mainPressure(first))).toEqual(setting(62));
    first.close();
    const again = device("phone", storage, []);
    await vi.waitFor(() => expect(settledValue(mainPressure(again))).toEqual(setting(62)));
    expect(again.status()).toMatchObject({ waiting: 3 });
  });

  test("stays closed when nothing of it is owed to the server, and is passed on all the same", async () => {
    const storage = createMemoryStorage();
    for (const { name, update } of teamDocuments()) await storage.append(name, update);
    const opened = device("phone", storage, []);
    await vi.waitFor(() => expect(opened.ledger.keys(memberKind)).toEqual(["kim"]));
    expect(mainPressure(opened).state).toBe("absent");
    const made = await opened.exportBundle("all");
    if (!made.ok) throw new Error(made.problem.type);
    expect(made.header.documents.map(({ name }) => name).sort()).toEqual([riderDocument, "team"].sort());
    expect(made.isIncomplete).toBe(false);
    const onlyOpen = await opened.exportBundle("open");
    expect(onlyOpen.ok && onlyOpen.header.documents.map(({ name }) => name)).toEqual(["team"]);
  });

  test("is said to be missing from the file when the disk does not give it", async () => {
    const disk = createMemoryStorage();
    for (const { name, update } of teamDocuments()) await disk.append(name, update);
    const storage: DeviceStorage = {
      ...disk,
      load: (name) => (name === riderDocument ? Promise.reject(new Error("It cannot be read.")) : disk.load(name)),
    };
    const opened = device("phone", storage, []);
    await vi.waitFor(() => expect(opened.ledger.keys(memberKind)).toEqual(["kim"]));
    expect(await opened.exportBundle("all")).toMatchObject({ ok: true, isIncomplete: true });
  });
});

describe("nothing of a file is merged", () => {
  test("when it is of another team", async () => {
    const phone = await filled("phone");
    const { revision } = phone.ledger;
    const other = [{ name: "team", update: stateOf([recordOf("member:ash", { name: "Ash", role: "rider" }, 5)], 21) }];
    const merged = await phone.importBundle(bundleOf(other));
    expect(merged).toMatchObject({ ok: false, problem: { type: "another team" } });
    expect(phone.ledger.revision).toBe(revision);
  });

  test("when one of its documents contradicts what is here under the same numbers", async () => {
    const phone = await filled("phone");
    const { revision } = phone.ledger;
    const more = recordOf("member:ash", { name: "Ash", role: "rider" }, 5);
    const merged = await phone.importBundle(
      bundleOf([
        { name: "team", update: stateOf([...teamRecords, more], 11) },
        { name: riderDocument, update: stateOf([recordOf(`setting:${KEY}`, setting(70), 9)], 12) },
      ]),
    );
    expect(merged).toEqual({
      ok: false,
      problem: { type: "refused document", document: riderDocument, reason: "contradicts" },
    });
    expect(phone.ledger.revision).toBe(revision);
    expect(phone.ledger.keys(memberKind)).toEqual(["kim"]);
  });
});

test("a device without storage says that what it took in is not saved", async () => {
  const broken: DeviceStorage = {
    ...createMemoryStorage(),
    append: () => Promise.reject(new Error("The disk is full.")),
  };
  const phone = device("phone", broken);
  expect(await phone.importBundle(bundleOf(teamDocuments()))).toMatchObject({ ok: true, saved: false });
  expect(settledValue(mainPressure(phone))).toEqual(setting(62));
});
