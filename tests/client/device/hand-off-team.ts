/** A team in a document, for bundles. */
import { monotonicFactory } from "ulid";
import * as Y from "yjs";
import { recordsName } from "#core/ledger/document.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";

const newId = monotonicFactory(() => 0.5);

/** A record that the guard lets pass; `minute` of 30 May 2026, 10 o'clock. */
export function recordOf(subject: `${string}:${string}`, value: unknown, minute: number, by = "kim"): LedgerRecord {
  const at = `2026-05-30T10:${String(minute).padStart(2, "0")}:00.000Z`;
  return { version: 1, id: newId(Date.parse(at)), subject, value, supersedes: [], by, device: "pit", at };
}

/** The whole state of a document that holds these records. */
export function stateOf(records: readonly unknown[], clientId: number): Uint8Array {
  const ydoc = new Y.Doc();
  ydoc.clientID = clientId;
  ydoc.getArray(recordsName).push([...records]);
  return Y.encodeStateAsUpdate(ydoc);
}

export const teamRecords = [
  recordOf("member:kim", { name: "Kim Larch", role: "mechanic" }, 0),
  recordOf("rider:alder", { name: "Alder", mass: { value: 80, unit: "kg" }, bike: "alder-1" }, 2),
];
export const riderRecords = [
  recordOf(
    "setting:alder/alder-1/fork.main-pressure",
    { quantity: { value: 62, unit: "psi" }, standing: "on the bike" },
    7,
  ),
];
export const riderDocument = "rider/alder/2026";

/** Two documents of three records, the same bytes at each call. */
export const teamDocuments = () => [
  { name: "team", update: stateOf(teamRecords, 11) },
  { name: riderDocument, update: stateOf(riderRecords, 12) },
];
