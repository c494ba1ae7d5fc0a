/** Five seasons of a team of forty: 120,000 runs and 400,000 changes, one file a document and one file with all of it. */
import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import * as Y from "yjs";
import { recordsName } from "#core/ledger/document.ts";
import { documentNameFor } from "#core/ledger/documents.ts";
import { type LedgerRecord, subjectOf } from "#core/ledger/record.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { weekendKind } from "#core/weekend/record-kinds.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { createRiderHistory } from "./rider-history.ts";

export const historySize = {
  riders: 40,
  seasons: [2027, 2028, 2029, 2030, 2031],
  runsPerSeason: 600,
  changesPerSeason: 2000,
} as const;

const SEED = 6;
const ALL = "all";

export const riderName = (index: number): string => `rider-${index}`;

/** Writes every document into a folder, and all records once more as one document. */
export function writeHistory(folder: string): void {
  const all = new Y.Doc();
  const keep = (name: string, records: readonly LedgerRecord[]): void => {
    const document = new Y.Doc();
    for (const target of [document, all]) target.getArray(recordsName).push([...records]);
    writeFileSync(fileOf(folder, name), Y.encodeStateAsUpdate(document));
  };
  keep("team", teamRecords());
  for (let index = 0; index < historySize.riders; index += 1) {
    const rider = riderName(index);
    const history = createRiderHistory(rider, createChance(SEED + index));
    for (const year of historySize.seasons) {
      const { runsPerSeason, changesPerSeason } = historySize;
      const records = history.write(Date.UTC(year, 3, 1), runsPerSeason, changesPerSeason);
      keep(documentNameFor({ scope: "rider", rider, year }), records);
    }
  }
  writeFileSync(fileOf(folder, ALL), Y.encodeStateAsUpdate(all));
}

/** The update that holds a document; undefined when there is none of that name. */
export function readHistory(folder: string, name: string): Uint8Array | undefined {
  try {
    return readFileSync(fileOf(folder, name));
  } catch {
    return undefined;
  }
}

/** The update that holds every record. */
export function readWholeHistory(folder: string): Uint8Array {
  return readFileSync(fileOf(folder, ALL));
}

function fileOf(folder: string, name: string): string {
  return join(folder, `${name.replaceAll("/", "_")}.update`);
}

function teamRecords(): readonly LedgerRecord[] {
  let count = 0;
  const record = (kind: string, key: string, value: unknown): LedgerRecord => {
    count += 1;
    const id = count.toString().padStart(26, "0");
    const at = "2027-01-01T09:00:00.000Z";
    return {
      version: 1,
      id,
      subject: subjectOf(kind, key),
      value,
      supersedes: [],
      by: "kim-larch",
      device: "laptop",
      at,
    };
  };
  const riders = Array.from({ length: historySize.riders }, (_, index) =>
    record(riderKind.kind, riderName(index), {
      name: `Rider ${index}`,
      mass: { value: 60 + index, unit: "kg" },
      bike: `${riderName(index)}-1`,
    }),
  );
  const weekends = historySize.seasons.flatMap((year) =>
    Array.from({ length: 10 }, (_, index) =>
      record(weekendKind.kind, `weekend-${year}-${index}`, {
        name: `Weekend ${index} of ${year}`,
        venue: "ridge",
        startsOn: `${year}-${String(4 + Math.floor(index / 2)).padStart(2, "0")}-10`,
      }),
    ),
  );
  return [...riders, ...weekends];
}
