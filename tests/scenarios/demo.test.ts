import { ulid } from "ulid";
import { describe, expect, it } from "vitest";
import * as Y from "yjs";
import { connectDocument } from "#core/ledger/document.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger } from "#core/ledger/ledger.ts";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import { riderBikes } from "#core/team/roster.ts";
import { programme, weekends } from "#core/weekend/programme.ts";
import { allKinds } from "#core/weekend/record-kinds.ts";
import { demoUpdates, loadDemo } from "#scenarios/demo-updates.ts";
import { createMemoryStore } from "#server/store/memory-store.ts";

const source = { newId: () => ulid(1_790_000_000_000), now: () => "2026-06-01T08:00:00.000Z" };

describe("the demo", () => {
  it("is one update of the team's document that the guard lets in, with every record readable", () => {
    const updates = demoUpdates(source);
    expect(updates.map(({ document }) => document)).toEqual(["team"]);
    const ydoc = new Y.Doc();
    const ledger = createLedger(createKindRegistry([...allKinds]));
    connectDocument(ydoc, "team", ledger);
    for (const { update } of updates) {
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

  it("goes into an empty store, and leaves a store that holds something alone", () => {
    const store = createMemoryStore();
    expect(loadDemo(store, source)).toBe(true);
    const held = store.load("team");
    expect(held).toHaveLength(1);
    expect(loadDemo(store, source)).toBe(false);
    expect(store.load("team")).toEqual(held);
  });
});
