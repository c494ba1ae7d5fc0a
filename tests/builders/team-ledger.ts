/** A ledger of one invented team with one rider and one weekend, and a writer that needs no clock and no chance. */
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { createWriter, describeLedgerProblem, type WriteResult, type Writer } from "#core/ledger/write.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { baselineKind, bikeKind, memberKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { documentForRecord } from "#core/weekend/documents.ts";
import { conditionsKind, courseKind, sessionKind, venueKind, weekendKind } from "#core/weekend/record-kinds.ts";
import { baseline, riderBike } from "./bike.ts";

export interface TeamLedger {
  readonly ledger: Ledger;
  /** A writer for a member, on a device of the same name. */
  writerFor(member: string): Writer;
}

/** ULIDs that count up: 26 characters, the last ones the count. */
export function countingIds(prefix = "01"): () => string {
  let count = 0;
  return () => {
    count += 1;
    return `${prefix}${String(count).padStart(26 - prefix.length, "0")}`;
  };
}

/** The outcome of a write that has to succeed. */
export function written(result: WriteResult) {
  if (!result.ok) throw new Error(describeLedgerProblem(result.problem));
  return result.records;
}

/** The ledger with members, rider "alder", baselines for steep and jumpy, and a weekend with two sessions. */
export function teamLedger(): TeamLedger {
  const ledger = createLedger(createKindRegistry([...allKinds]));
  const newId = countingIds();
  let minute = 0;
  const writerFor = (member: string): Writer =>
    createWriter({
      ledger,
      append: () => {},
      newId,
      now: () => {
        minute += 1;
        return new Date(Date.UTC(2026, 4, 29, 8, minute)).toISOString();
      },
      by: member,
      device: member,
      documentFor: (kind, key) => documentForRecord(kind, key, 2026),
    });
  const { rider, bike, parts } = riderBike();
  const entries = [
    { kind: memberKind, key: "mia", value: { name: "Mia", role: "mechanic" } },
    { kind: riderKind, key: "alder", value: rider },
    { kind: bikeKind, key: "alder-1", value: bike },
    { kind: partKind, key: "fork-1", value: parts.fork },
    { kind: partKind, key: "shock-1", value: parts.shock },
    { kind: partKind, key: "tyre-1", value: parts["front-tyre"] },
    { kind: partKind, key: "tyre-2", value: parts["rear-tyre"] },
    { kind: baselineKind, key: "alder/steep", value: baseline() },
    {
      kind: baselineKind,
      key: "alder/jumpy",
      value: baseline({ "fork.secondary-pressure": { value: 120, unit: "psi" } }),
    },
    { kind: venueKind, key: "ridge", value: { name: "Kestrel Ridge", altitude: { value: 0, unit: "m" } } },
    { kind: weekendKind, key: "kestrel", value: { name: "Kestrel", venue: "ridge", startsOn: "2026-05-29" } },
    ...["p1", "race"].map((id, index) => ({
      kind: sessionKind,
      key: `kestrel/${id}`,
      value: { name: id, purpose: index === 0 ? "practice" : "race", startsAt: `2026-05-${29 + index}T10:00` },
    })),
  ];
  written(writerFor("mia").setMany(entries as Parameters<Writer["setMany"]>[0]));
  return { ledger, writerFor };
}

/** Enters the course and the same conditions for both sessions. */
export function enterCourse(writer: Writer, mix = { steep: 1, jumpy: 0, wet: 0 }): void {
  const conditions = { air: { value: 20, unit: "°C" }, ground: "dry" } as const;
  written(
    writer.setMany([
      { kind: courseKind, key: "kestrel", value: { mix, altitude: { value: 0, unit: "m" } } },
      { kind: conditionsKind, key: "kestrel/p1", value: conditions },
      { kind: conditionsKind, key: "kestrel/race", value: conditions },
    ] as Parameters<Writer["setMany"]>[0]),
  );
}
