/** Views of what is set on a bike now, as far as the records tell. */
import { type Current, type Ledger, settledValue } from "#core/ledger/ledger.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { mountedAdjusters, type RiderBike } from "#core/team/roster.ts";
import { settingKind } from "./record-kinds.ts";
import type { Setting } from "./setting.ts";

/** The key of a setting's subject. */
export function settingKey(riderId: string, bikeId: string, path: AdjusterPath): string {
  return `${riderId}/${bikeId}/${path}`;
}

/** The rider, bike and adjuster of a setting's key, or undefined when `key` is none. */
export function parseSettingKey(
  key: string,
): { readonly riderId: string; readonly bikeId: string; readonly path: AdjusterPath } | undefined {
  const [riderId, bikeId, path, ...rest] = key.split("/");
  return riderId && bikeId && path && rest.length === 0 ? { riderId, bikeId, path: path as AdjusterPath } : undefined;
}

/** The current state of each of a bike's adjusters: absent, settled or disputed. */
export function settingsOnBike(ledger: Ledger, mounted: RiderBike): ReadonlyMap<AdjusterPath, Current<Setting>> {
  return new Map(
    mountedAdjusters(mounted.parts).map(({ path }) => [
      path,
      ledger.current(settingKind, settingKey(mounted.riderId, mounted.bikeId, path)),
    ]),
  );
}

/** Those that are settled. An adjuster in dispute has none: nobody knows what is on the bike. */
export function settledSettings(
  settings: ReadonlyMap<AdjusterPath, Current<Setting>>,
): ReadonlyMap<AdjusterPath, Setting> {
  const settled = new Map<AdjusterPath, Setting>();
  for (const [path, current] of settings) {
    const setting = settledValue(current);
    if (setting) settled.set(path, setting);
  }
  return settled;
}

/** The settled values on a bike. */
export function valuesOnBike(settings: ReadonlyMap<AdjusterPath, Current<Setting>>): SetupValues {
  return Object.fromEntries([...settledSettings(settings)].map(([path, { quantity }]) => [path, quantity]));
}
