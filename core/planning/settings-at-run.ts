/** What was on the bike at a run, by the run's own record. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { splitSubject } from "#core/ledger/record.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { parseSettingKey } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";

/**
 * The settings that the run's own record names; what it does not name is taken from `otherwise`.
 */
export function settingsAtRun(
  ledger: Ledger,
  { run, riderId }: Pick<LoggedRun, "run" | "riderId">,
  otherwise: ReadonlyMap<AdjusterPath, Setting> = new Map(),
): ReadonlyMap<AdjusterPath, Setting> {
  const then = new Map(otherwise);
  for (const id of run.setup ?? []) {
    const record = ledger.record(id);
    const subject = record && splitSubject(record.subject);
    const address = subject?.kind === settingKind.kind ? parseSettingKey(subject.key) : undefined;
    if (record?.value === undefined || address?.riderId !== riderId || address.bikeId !== run.bike) continue;
    then.set(address.path, record.value as Setting);
  }
  return then;
}
