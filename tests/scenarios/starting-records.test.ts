import { ulid } from "ulid";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { connectDocument } from "#core/ledger/document.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger } from "#core/ledger/ledger.ts";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { riderBikes } from "#core/team/roster.ts";
import { programme, weekends } from "#core/weekend/programme.ts";
import { demoFiles, loadTeam } from "#scenarios/starting-records.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";

const source = { newId: () => ulid(1_790_000_000_000), now: () => "2026-06-01T08:00:00.000Z" };

describe("the first records of a data folder", () => {
  it("are one update of the team's document that the guard lets in, with every record readable", () => {
    const store = createMemoryStore();
    expect(loadTeam(store, demoFiles, source)).toEqual({
      ok: true,
      team: 8,
      weekends: ["Kestrel Ridge Downhill", "Otter Hollow Downhill"],
    });
    expect(store.documents()).toEqual(["team"]);
    const ydoc = new Y.Doc();
    const ledger = createLedger(createKindRegistry([...allKinds]));
    connectDocument(ydoc, "team", ledger);
    const updates = store.load("team");
    expect(updates).toHaveLength(1);
    for (const update of updates) {
      expect(inspectUpdate(update, ydoc).ok).toBe(true);
      Y.applyUpdate(ydoc, update);
    }
    expect(ledger.unreadable()).toEqual([]);
    expect(riderBikes(ledger)).toHaveLength(8);
    expect(weekends(ledger).map(({ id }) => id)).toEqual(["otter-hollow-2026", "kestrel-ridge-2026"]);
    const plan = programme(ledger, "kestrel-ridge-2026");
    expect(plan?.sessions.map(({ id }) => id)).toEqual(["practice-1", "practice-2", "qualifying", "race"]);
    expect(plan?.course, "the course is left for somebody to enter").toBeUndefined();
  });

  it("begin on the day that is asked for: sessions keep their times, weekends their distance, over the end of a year", () => {
    const store = createMemoryStore();
    loadTeam(store, demoFiles, { ...source, firstDay: "2026-12-30" });
    const ydoc = new Y.Doc();
    const ledger = createLedger(createKindRegistry([...allKinds]));
    connectDocument(ydoc, "team", ledger);
    for (const update of store.load("team")) Y.applyUpdate(ydoc, update);
    const kestrel = programme(ledger, "kestrel-ridge-2026");
    expect(kestrel?.weekend.startsOn).toBe("2026-12-30");
    expect(kestrel?.sessions.map(({ session }) => session.startsAt)).toEqual([
      "2026-12-30T10:00",
      "2026-12-30T15:00",
      "2026-12-31T11:00",
      "2027-01-01T13:30",
    ]);
    // 12 June to 17 July is 35 days.
    expect(programme(ledger, "otter-hollow-2026")?.weekend.startsOn).toBe("2027-02-03");
  });

  it("leave a store that holds something alone", () => {
    const store = createMemoryStore();
    loadTeam(store, demoFiles, source);
    const held = store.load("team");
    expect(loadTeam(store, demoFiles, source)).toEqual({
      ok: false,
      problems: ["The data folder has records already; a team goes into an empty one."],
    });
    expect(store.load("team")).toEqual(held);
  });

  it("are not written when one of the files is wrong: each problem is a sentence with its file", () => {
    const store = createMemoryStore();
    const result = loadTeam(store, [...demoFiles, "nowhere.json"], source);
    expect(result).toEqual({
      ok: false,
      problems: ['nowhere.json: The scenario\'s file "nowhere.json" cannot be read.'],
    });
    expect(store.documents()).toEqual([]);
  });
});
