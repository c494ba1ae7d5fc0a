import { describe, expect, test } from "vitest";
import { openSeasons, writingSeason } from "#client/device/open-seasons.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { createWriter } from "#core/ledger/write.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { weekendKind } from "#core/weekend/record-kinds.ts";
import { countingIds, written } from "#tests/builders/team-ledger.ts";

/** A ledger with a weekend that starts on each of these days. */
function withWeekends(...days: readonly string[]): Ledger {
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const writer = createWriter({
    ledger,
    append: () => {},
    newId: countingIds(),
    now: () => "2026-01-01T08:00:00.000Z",
    by: "mia",
    device: "pit",
    documentFor: () => "team",
  });
  for (const [index, startsOn] of days.entries()) {
    written(writer.set(weekendKind, `weekend-${index}`, { name: startsOn, venue: "ridge", startsOn }));
  }
  return ledger;
}

describe("the seasons that a device opens", () => {
  test("without a weekend it is the year by the clock", () => {
    expect(openSeasons(withWeekends(), "2026-11-25")).toEqual([2026]);
  });

  test("a weekend of the next year is written to once this year's are over, and last season stays open", () => {
    const ledger = withWeekends("2026-06-12", "2027-03-12");
    expect(writingSeason(ledger, "2026-11-25")).toBe(2027);
    expect(openSeasons(ledger, "2026-11-25")).toEqual([2026, 2027]);
  });

  test("a weekend of the next year is open already while this year's is still to come", () => {
    const ledger = withWeekends("2026-12-12", "2027-03-12");
    expect(writingSeason(ledger, "2026-11-25")).toBe(2026);
    expect(openSeasons(ledger, "2026-11-25")).toEqual([2026, 2027]);
  });

  test("of many past seasons only the last is opened", () => {
    const ledger = withWeekends("2023-06-12", "2024-06-12", "2025-06-12", "2026-06-12");
    expect(openSeasons(ledger, "2026-06-12")).toEqual([2025, 2026]);
  });

  test("a mistyped year takes no records with it, and opens no document", () => {
    const ledger = withWeekends("2206-06-12", "2306-06-12");
    expect(writingSeason(ledger, "2026-06-12")).toBe(2026);
    expect(openSeasons(ledger, "2026-06-12")).toEqual([2026]);
  });

  test("a year that cannot name a document opens none", () => {
    expect(openSeasons(withWeekends("0202-06-12"), "2026-06-12")).toEqual([2026]);
  });
});
