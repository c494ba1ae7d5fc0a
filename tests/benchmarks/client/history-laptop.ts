/** The pit laptop with five seasons behind the demo team, which were written straight into its log. */
import * as Y from "yjs";
import { recordsName } from "#core/ledger/document.ts";
import { documentNameFor } from "#core/ledger/documents.ts";
import { type LedgerRecord, subjectOf } from "#core/ledger/record.ts";
import { weekendKind } from "#core/weekend/record-kinds.ts";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { type PitLaptop, startPitLaptop } from "#tests/browser/pit-laptop.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { createRiderHistory } from "../sync/rider-history.ts";

/** The demo team's riders by id. */
export const demoRiders = ["alder", "linden", "hazel", "sorrel", "bramble", "juniper", "thistle", "willow"] as const;

/** The last is the season of the demo's weekends. */
const SEASONS = [2022, 2023, 2024, 2025, 2026] as const;
const WEEKENDS_PER_SEASON = 10;
export const demoHistory = { seasons: SEASONS.length, runsPerSeason: 600, changesPerSeason: 2000 } as const;

const SEED = 9;

/** Starts a real server on that history; see {@link startPitLaptop}. */
export function startHistoryLaptop(): Promise<PitLaptop> {
  return startPitLaptop((data) => {
    const store = openSqliteStore(data);
    try {
      store.append([{ document: "team", update: updateOf(earlierWeekends()) }, ...riderSeasons()]);
    } finally {
      store.close();
    }
  });
}

function riderSeasons(): readonly { readonly document: string; readonly update: Uint8Array }[] {
  const { runsPerSeason, changesPerSeason } = demoHistory;
  return demoRiders.flatMap((rider, index) => {
    const history = createRiderHistory(rider, createChance(SEED + index), `${rider}-bike`);
    return SEASONS.map((year) => ({
      document: documentNameFor({ scope: "rider", rider, year }),
      update: updateOf(history.write(Date.UTC(year, 3, 1), runsPerSeason, changesPerSeason)),
    }));
  });
}

/** The weekends of the seasons before the demo's: by them a device knows that there is an earlier season to open. */
function earlierWeekends(): readonly LedgerRecord[] {
  return SEASONS.slice(0, -1).flatMap((year) =>
    Array.from({ length: WEEKENDS_PER_SEASON }, (_, index): LedgerRecord => {
      const startsOn = `${year}-${String(4 + Math.floor(index / 2)).padStart(2, "0")}-${index % 2 === 0 ? "10" : "24"}`;
      return {
        version: 1,
        id: `${year}${index}`.padStart(26, "0"),
        subject: subjectOf(weekendKind.kind, `weekend-${year}-${index}`),
        value: { name: `Weekend ${index + 1} of ${year}`, venue: "kestrel-ridge", startsOn },
        supersedes: [],
        by: "heather",
        device: "manager-tablet",
        at: `${year}-01-10T09:00:00.000Z`,
      };
    }),
  );
}

function updateOf(records: readonly LedgerRecord[]): Uint8Array {
  const document = new Y.Doc();
  document.getArray(recordsName).push([...records]);
  const update = Y.encodeStateAsUpdate(document);
  document.destroy();
  return update;
}
