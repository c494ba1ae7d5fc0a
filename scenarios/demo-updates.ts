import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import * as Y from "yjs";
import { connectDocument } from "#core/ledger/document.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger } from "#core/ledger/ledger.ts";
import { createWriter, describeLedgerProblem } from "#core/ledger/write.ts";
import { allKinds } from "#core/weekend/record-kinds.ts";
import type { LogEntry, UpdateStore } from "#server/store/update-store.ts";
import { loadScenario } from "./gate/load-scenario.ts";
import { teamEntries, weekendEntries } from "./player/initial-entries.ts";
import type { Scenario } from "./schema/scenario.ts";

const demoWeekends = ["kestrel-ridge.json", "otter-hollow.json"] as const;

/** Where the ids and the time of the demo's records come from. */
export interface DemoSource {
  /** A new ULID. */
  newId(): string;
  /** The time now, ISO 8601 in UTC. */
  now(): string;
}

/**
 * The demo as updates for an empty log: the invented team, and its two weekends up to the point where somebody enters
 * the course. All of it is in the document "team", in one update.
 */
export function demoUpdates({ newId, now }: DemoSource): readonly LogEntry[] {
  const [first, ...others] = demoWeekends.map(demoScenario);
  if (first === undefined) throw new Error("The demo has no weekend.");
  const ydoc = new Y.Doc();
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const document = connectDocument(ydoc, "team", ledger);
  const writer = createWriter({
    ledger,
    append: (record) => document.append([record]),
    appendMany: (records) => document.append(records),
    newId,
    now,
    by: firstManager(first),
    device: "demo",
    documentFor: () => "team",
  });
  const entries = [...teamEntries(first.team), ...[first, ...others].flatMap(weekendEntries)];
  const written = writer.setMany(entries, { cause: { type: "setup" } });
  if (!written.ok) throw new Error(`The demo cannot be written: ${describeLedgerProblem(written.problem)}`);
  const update = Y.encodeStateAsUpdate(ydoc);
  ydoc.destroy();
  return [{ document: "team", update }];
}

/** Puts the demo into a store that is empty. False, and nothing is changed, when the store holds anything. */
export function loadDemo(store: UpdateStore, source: DemoSource): boolean {
  if (store.documents().length > 0) return false;
  store.append(demoUpdates(source));
  return true;
}

function demoScenario(fileName: string): Scenario {
  const parsed = loadScenario(join(dirname(fileURLToPath(import.meta.url)), fileName));
  if (!parsed.ok) throw new Error(`The demo's ${fileName} is not valid: ${parsed.problems.join(" ")}`);
  return parsed.scenario;
}

function firstManager({ team }: Scenario): string {
  const manager = Object.entries(team.members).find(([, member]) => member.role === "manager");
  if (manager === undefined) throw new Error("The demo's team has no manager.");
  return manager[0];
}
