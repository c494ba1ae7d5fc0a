/** Pressures on a bike that are off for a session because of its temperature alone. */
import { benchReading, readingAfter } from "#core/advice/bench-reading.ts";
import { settable } from "#core/advice/limits.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { convert, dimensionOf, type TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { SetupSheet, SheetRow } from "../setup-sheet.ts";

export interface PressureCheck {
  /** Set as a sheet said, and that value has not changed: this sheet asks for them by the temperature alone. */
  readonly bySheet: readonly AdjusterPath[];
  /** Set to a value of their own: what to set at the bench now, so that they ride as they were meant to. */
  readonly chosen: Readonly<Partial<Record<AdjusterPath, TypedQuantity>>>;
}

/**
 * The pressures to check before the session of `sheet`. Each was set for some session of this weekend: what it rode at
 * there is what it was meant to be. For a value of the sheet it counts what can be read, as the sheet itself does; for one
 * that somebody chose, what can be felt when riding.
 */
export function pressureCheck(sheet: SetupSheet): PressureCheck {
  const bySheet: AdjusterPath[] = [];
  const chosen: Partial<Record<AdjusterPath, TypedQuantity>> = {};
  for (const row of sheet.rows) {
    const meant = meantPressure(sheet, row);
    if (!meant) continue;
    if (
      row.state === "to set" &&
      row.weekend &&
      distance(row, meant.pressure, row.weekend) <= row.found.adjuster.step
    ) {
      bySheet.push(row.path);
    }
    if (row.state === "adjusted") {
      const rides = readingAfter(meant.setting.quantity, meant.heldAt, sheet.setup.course);
      if (distance(row, rides, meant.pressure) < row.found.adjuster.felt) continue;
      const { unit } = row.found.adjuster;
      const atBench = convert(benchReading(meant.pressure, sheet.setup.course, sheet.setup.bench), unit);
      chosen[row.path] = settable(row.found, atBench.value);
    }
  }
  return { bySheet, chosen };
}

interface Meant {
  readonly setting: Setting;
  readonly heldAt: Surroundings;
  /** What it rode at in the session that it was set for, unrounded. */
  readonly pressure: TypedQuantity;
}

/** Undefined for all but pressures that were put on the bike this weekend for a session whose temperature is known. */
function meantPressure({ programme, setup }: SetupSheet, { current }: SheetRow): Meant | undefined {
  const setting = settledValue(current);
  if (!setting?.heldAt || setting.standing !== "on the bike" || setting.weekend !== programme.weekendId)
    return undefined;
  if (dimensionOf(setting.quantity.unit) !== "pressure") return undefined;
  const { heldAt } = setting;
  const conditions = programme.sessions.find(({ id }) => id === setting.session)?.conditions;
  if (!conditions) return undefined;
  const ride: Surroundings = { temperature: conditions.air, altitude: setup.course.altitude };
  return { setting, heldAt, pressure: readingAfter(setting.quantity, heldAt, ride) };
}

/** In the adjuster's unit. */
function distance({ found }: SheetRow, a: TypedQuantity, b: TypedQuantity): number {
  const { unit } = found.adjuster;
  return Math.abs(convert(a, unit).value - convert(b, unit).value);
}
