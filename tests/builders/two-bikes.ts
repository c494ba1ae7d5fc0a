/** The invented team with a spare bike, and what another device wrote while it was apart. */
import type { RecordKind } from "#core/ledger/kind.ts";
import { type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { createWriter, type Writer } from "#core/ledger/write.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { Bike } from "#core/team/bike.ts";
import type { Part } from "#core/team/part.ts";
import { bikeKind, partKind } from "#core/team/record-kinds.ts";
import { type RiderBike, riderOnBike } from "#core/team/roster.ts";
import { documentForRecord } from "#core/weekend/documents.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { coilShock, oneChamberFork, riderBike, setupValues } from "./bike.ts";
import { countingIds, type TeamLedger, teamLedger, written } from "./team-ledger.ts";

export const RACE = "alder-1";
export const SPARE = "alder-2";
export const OTHER = "alder-3";

/** A shock with a shorter stroke and another range of springs. */
export const shortShock: Part = {
  archetype: "coil",
  place: "shock",
  name: "Short coil shock",
  geometry: { stroke: { value: 65, unit: "mm" }, threadPitch: { value: 1.5, unit: "mm" } },
  adjusters: coilShock.adjusters.map((adjuster) =>
    adjuster.kind === "spring-rate" ? { ...adjuster, minimum: 90, maximum: 140 } : adjuster,
  ),
};

/** {@link teamLedger} with two more bikes of the rider: one with a one-chamber fork and a short shock, one with the same fork. */
export function teamWithSpare(fork: Part = oneChamberFork): TeamLedger {
  const team = teamLedger();
  const { bike, parts } = riderBike();
  const spare = (name: string, number: number): Bike => ({
    ...bike,
    name,
    parts: {
      fork: `fork-${number}`,
      shock: `shock-${number}`,
      "front-tyre": `front-${number}`,
      "rear-tyre": `rear-${number}`,
    },
  });
  const mia = team.writerFor("mia");
  const entries: (readonly [RecordKind, string, unknown])[] = [2, 3].flatMap((number) => [
    [partKind, `fork-${number}`, fork],
    [partKind, `shock-${number}`, shortShock],
    [partKind, `front-${number}`, parts["front-tyre"]],
    [partKind, `rear-${number}`, parts["rear-tyre"]],
    [bikeKind, `alder-${number}`, spare(number === 2 ? "Alder two" : "Alder three", number)],
  ]);
  written(mia.setMany(entries.map(([kind, key, value]) => ({ kind, key, value }))));
  return team;
}

/** Puts {@link setupValues}, or other values, on a bike. */
export function putOn(
  writer: Writer,
  bikeId = RACE,
  values: Partial<Record<string, Setting["quantity"]>> = setupValues,
) {
  const entries = Object.entries(values).map(([path, quantity]) => ({
    kind: settingKind as RecordKind,
    key: settingKey("alder", bikeId, path as AdjusterPath),
    value: { quantity, standing: "on the bike" },
  }));
  return written(writer.setMany(entries));
}

export function bikeOf(ledger: Ledger, bikeId: string): RiderBike {
  const found = riderOnBike(ledger, bikeId);
  if (!found) throw new Error(`There is no bike ${bikeId}.`);
  return found;
}

export function settingOn(ledger: Ledger, bikeId: string, path: AdjusterPath) {
  return settledValue(ledger.current(settingKind, settingKey("alder", bikeId, path)))?.quantity;
}

/** Two devices that know the same and then write apart; `meet` gives each what the other wrote. */
export function apart(team: TeamLedger, copy: TeamLedger): { readonly nils: Writer; meet(): void } {
  const newId = countingIds("02");
  const sent: { readonly record: unknown; readonly document: string }[] = [];
  let minute = 0;
  const nils = createWriter({
    ledger: copy.ledger,
    append: (record, document) => void sent.push({ record, document }),
    newId,
    now: () => {
      minute += 1;
      return new Date(Date.UTC(2026, 4, 29, 12, minute)).toISOString();
    },
    by: "nils",
    device: "phone",
    documentFor: (kind, key) => documentForRecord(kind, key, 2026),
  });
  return {
    nils,
    meet: () => {
      for (const { record, document } of sent.splice(0)) team.ledger.add(record, document);
    },
  };
}
