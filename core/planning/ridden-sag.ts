/** The sag that was measured with the settings which are on the bike now: the only one that belongs to them. */
import type { Current, Ledger } from "#core/ledger/ledger.ts";
import { splitSubject } from "#core/ledger/record.ts";
import { type TypedQuantity, toSi } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { Baseline } from "#core/team/baseline.ts";
import { ends, suspensionOf } from "#core/team/place.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { parseSettingKey, settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { type LoggedRun, loggedRuns } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";

/** What a baseline can hold: 1 to 200 mm along the part, m. */
const SAG_OF_BASELINE = { minimum: 0.001, maximum: 0.2 } as const;

/**
 * Sag along fork and shock from the weekend's latest run that measured it at that end, as typed; an end is absent when
 * none did, or when anything on that part has been set differently since.
 */
export function riddenSag(ledger: Ledger, mounted: RiderBike, weekendId: string): NonNullable<Baseline["sag"]> {
  const runs = loggedRuns(ledger, weekendId, mounted.riderId).filter(({ run }) => run.bike === mounted.bikeId);
  const settings = settingsOnBike(ledger, mounted);
  const sag: { fork?: TypedQuantity; shock?: TypedQuantity } = {};
  for (const end of ends) {
    const place = suspensionOf(end);
    const latest = runs.find(({ run }) => run[end].sag !== undefined);
    const measured = latest?.run[end].sag;
    if (!latest || !measured || !fitsBaseline(measured)) continue;
    if (isRiddenSetup(riddenOn(ledger, latest, place), settings, place)) sag[place] = measured;
  }
  return sag as NonNullable<Baseline["sag"]>;
}

function fitsBaseline(sag: TypedQuantity): boolean {
  const { minimum, maximum } = SAG_OF_BASELINE;
  return toSi(sag) >= minimum - 1e-9 && toSi(sag) <= maximum + 1e-9;
}

/** The records of `place` that the run was ridden with. */
function riddenOn(ledger: Ledger, { run, riderId }: LoggedRun, place: "fork" | "shock"): ReadonlySet<string> {
  return new Set(
    (run.setup ?? []).filter((id) => {
      const subject = ledger.record(id)?.subject;
      const split = subject === undefined ? undefined : splitSubject(subject);
      const address = split?.kind === settingKind.kind ? parseSettingKey(split.key) : undefined;
      return address?.riderId === riderId && address.bikeId === run.bike && isAt(address.path, place);
    }),
  );
}

/** True when the run names exactly what is current on the part; of a dispute it knew one side at most. */
function isRiddenSetup(
  ridden: ReadonlySet<string>,
  settings: ReadonlyMap<AdjusterPath, Current<Setting>>,
  place: "fork" | "shock",
): boolean {
  const now = new Set<string>();
  for (const [path, current] of settings) {
    if (!isAt(path, place) || current.state === "absent") continue;
    for (const head of current.heads) {
      // A mechanic who confirms the rider's report writes a record of his own and changes nothing on the bike.
      now.add(head.cause?.type === "confirmation" ? head.cause.record : head.id);
    }
  }
  return now.size > 0 && now.size === ridden.size && [...now].every((id) => ridden.has(id));
}

function isAt(path: AdjusterPath, place: "fork" | "shock"): boolean {
  return path.startsWith(`${place}.`);
}
