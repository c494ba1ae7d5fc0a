import { describe, expect, test } from "vitest";
import { type DocumentFacts, syncStatus, waitingRecords } from "#client/device/sync-status.ts";

const well: DocumentFacts = {
  loaded: true,
  storageFails: false,
  unsaved: 0,
  connected: true,
  acknowledged: true,
  waiting: 0,
};

const table: readonly (readonly [string, readonly Partial<DocumentFacts>[], string])[] = [
  ["no document is open yet", [], "loading"],
  ["one update is not proven to be on the disk, whatever the server has", [{}, { unsaved: 1 }], "saving"],
  ["offline, and one update is not proven to be on the disk", [{ connected: false, unsaved: 1 }], "saving"],
  ["one local copy has not been read", [{}, { loaded: false }], "loading"],
  ["all is acknowledged", [{}, {}], "on the server"],
  ["connected, and the server has not said what it has", [{}, { acknowledged: false }], "on this device only"],
  ["one record is not proven to be on the server", [{}, { waiting: 1 }], "on this device only"],
  ["one socket is closed, whatever was acknowledged", [{}, { connected: false }], "offline"],
  ["storage failed, whatever the server has", [{}, { storageFails: true }], "not saved on this device"],
  ["storage failed before it was read", [{ loaded: false, storageFails: true }], "not saved on this device"],
];

describe("the sync state follows from the facts", () => {
  test.each(table)("%s", (_name, facts, state) => {
    expect(
      syncStatus(
        facts.map((fact) => ({ ...well, ...fact })),
        7,
      ).state,
    ).toBe(state);
  });

  test("it counts what waits over all documents, and says since when it is offline", () => {
    const facts = [
      { ...well, waiting: 2 },
      { ...well, connected: false, waiting: 3 },
    ];
    expect(syncStatus(facts, 7)).toEqual({ state: "offline", since: 7, waiting: 5 });
  });
});

test("a record waits when the server's clock for its writer is below it, and never less than none", () => {
  const local = new Map([
    [1, 10],
    [2, 4],
    [3, 1],
  ]);
  const held = new Map([
    [1, 8],
    [2, 9],
  ]);
  expect(waitingRecords(local, held)).toBe(3);
});
