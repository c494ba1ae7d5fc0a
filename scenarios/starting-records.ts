/** A team and its weekends as the first records of an empty data folder. */
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import * as Y from "yjs";
import { connectDocument } from "#core/ledger/document.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger } from "#core/ledger/ledger.ts";
import { createWriter, describeLedgerProblem } from "#core/ledger/write.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import type { UpdateStore } from "#server/store/update-store.ts";
import { loadScenario } from "./gate/load-scenario.ts";
import { moveWeekends } from "./move-weekends.ts";
import { teamEntries, weekendEntries } from "./player/initial-entries.ts";
import type { Scenario } from "./schema/scenario.ts";

/** The files of the demo: one invented team, and its two weekends. */
export const demoFiles: readonly string[] = ["kestrel-ridge.json", "otter-hollow.json"].map((name) =>
  join(dirname(fileURLToPath(import.meta.url)), name),
);

/** Where the ids and the time of the records come from. */
export interface RecordSource {
  /** A new ULID. */
  newId(): string;
  /** The time now, ISO 8601 in UTC. */
  now(): string;
  /** The day on which the first weekend begins (ISO 8601); absent: as the files say. */
  readonly firstDay?: string;
}

export type LoadResult =
  | { readonly ok: true; readonly team: number; readonly weekends: readonly string[] }
  | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Puts the team of `files` (scenarios, all of the same team) and their weekends, up to the point where somebody enters
 * the course, into a store that is empty. All of it is one update of the document "team". With any problem nothing is
 * written, and each is one sentence.
 */
export function loadTeam(store: UpdateStore, files: readonly string[], source: RecordSource): LoadResult {
  const scenarios: Scenario[] = [];
  const problems: string[] = [];
  for (const file of files) {
    const parsed = loadScenario(file);
    if (parsed.ok) scenarios.push(parsed.scenario);
    else problems.push(...parsed.problems.map((problem) => `${file}: ${problem}`));
  }
  const [first] = scenarios;
  const team = JSON.stringify(first?.team);
  if (scenarios.some((scenario) => JSON.stringify(scenario.team) !== team)) {
    problems.push("The files are of different teams; one data folder holds one team.");
  }
  if (store.documents().length > 0)
    problems.push("The data folder has records already; a team goes into an empty one.");
  if (!first || problems.length > 0) return { ok: false, problems };
  const { firstDay } = source;
  const update = updateOf(first, firstDay === undefined ? scenarios : moveWeekends(scenarios, firstDay), source);
  if (typeof update === "string") return { ok: false, problems: [update] };
  store.append([{ document: "team", update }]);
  return {
    ok: true,
    team: Object.keys(first.team.riders).length,
    weekends: scenarios.map(({ weekend }) => weekend.name),
  };
}

/** One update with all records, or the sentence that says which of them cannot be written. */
function updateOf(first: Scenario, scenarios: readonly Scenario[], { newId, now }: RecordSource): Uint8Array | string {
  const ydoc = new Y.Doc();
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const document = connectDocument(ydoc, "team", ledger);
  const writer = createWriter({
    ledger,
    append: (record) => document.append([record]),
    appendMany: (records) => document.append(records),
    newId,
    now,
    by: authorOf(first),
    device: "first-records",
    documentFor: () => "team",
  });
  const entries = [...teamEntries(first.team), ...scenarios.flatMap(weekendEntries)];
  const written = writer.setMany(entries, { cause: { type: "setup" } });
  const update = Y.encodeStateAsUpdate(ydoc);
  ydoc.destroy();
  return written.ok ? update : describeLedgerProblem(written.problem);
}

/** The first manager of the team, or whoever comes first where there is none. */
function authorOf({ team }: Scenario): string {
  const members = Object.entries(team.members);
  const [id] = members.find(([, member]) => member.role === "manager") ?? members[0] ?? ["nobody"];
  return id;
}
