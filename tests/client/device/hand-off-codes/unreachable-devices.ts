/** Devices that reach no server: what one of them knows gets to another by codes. */
import { monotonicFactory } from "ulid";
import { afterEach, vi } from "vitest";
import type { NamedUpdate } from "#client/device/hand-off/bundle.ts";
import { makeBundle } from "#client/device/hand-off/make-bundle.ts";
import { readBundle } from "#client/device/hand-off/read-bundle.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";
import { openTeamDevice, type TeamDevice } from "#client/device/team-device.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { teamDocuments } from "#tests/client/device/hand-off-team.ts";

export const KEY = "alder/alder-1/fork.main-pressure";
export const setting = (psi: number): Setting => ({ quantity: { value: psi, unit: "psi" }, standing: "on the bike" });
const MORNING = Date.parse("2026-05-30T11:00:00.000Z");

let devices: TeamDevice[] = [];
let clientId = 100;

afterEach(() => {
  for (const opened of devices) opened.close();
  devices = [];
});

/** A device without anything on it. */
export function emptyDevice(id: string, shows: "all" | readonly string[] = "all"): TeamDevice {
  const draw = devices.length / 32;
  const newId = monotonicFactory(() => draw);
  const opened = openTeamDevice({
    storage: createMemoryStorage(),
    openSocket: () => ({ send: () => {}, close: () => {} }),
    // What is put off by a time never comes; only what is done in turns goes on.
    timers: { now: () => MORNING, after: () => () => {} },
    inTheBackground: (act) => void setImmediate(act),
    random: () => 0.5,
    clientId: () => clientId++,
    deviceId: id,
    newId: (moment) => newId(moment),
  });
  opened.showRiders(shows);
  devices.push(opened);
  return opened;
}

/** A device that has these documents. */
export async function deviceWith(
  id: string,
  documents: readonly NamedUpdate[] = teamDocuments(),
  shows: "all" | readonly string[] = "all",
): Promise<TeamDevice> {
  const opened = emptyDevice(id, shows);
  const made = makeBundle({ documents, device: "pit", at: "2026-05-30T10:30:00.000Z" });
  const reading = made.ok ? readBundle(made.bytes) : made;
  const merged = reading.ok ? await opened.importBundle(reading.bundle) : reading;
  if (!merged.ok) throw new Error(merged.problem.type);
  await vi.waitFor(() => {
    if (!opened.isLoaded()) throw new Error("Not loaded yet.");
  });
  return opened;
}
