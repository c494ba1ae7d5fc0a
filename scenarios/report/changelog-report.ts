import type { Ledger } from "#core/ledger/ledger.ts";
import { answeredRun, describeCause } from "#core/planning/changelog-text.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { changelog } from "#core/weekend/changelog.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { Naming } from "./naming.ts";

export interface ReportedChange {
  readonly at: string;
  readonly by: string;
  readonly device: string;
  readonly adjuster: AdjusterPath;
  /** None for a first setting, several when a dispute was resolved. */
  readonly from: readonly TypedQuantity[];
  /** Absent when the change withdrew the setting. */
  readonly to: TypedQuantity | undefined;
  readonly standing: Setting["standing"] | undefined;
  /** What sort of cause its record names. */
  readonly cause: string | undefined;
  readonly why: string;
  /** The run that it answers. */
  readonly run: string | undefined;
}

/** The changes of a weekend, oldest first. */
export function reportChangelog(
  ledger: Ledger,
  naming: Naming,
  weekend: string,
  riderId: string,
): readonly ReportedChange[] {
  return [...changelog(ledger, { riderId, weekend })].reverse().map((change) => {
    const run = answeredRun(change);
    return {
      at: change.at,
      by: naming.member(change.by),
      device: change.device,
      adjuster: change.path,
      from: change.from,
      to: change.to,
      standing: change.standing,
      cause: change.cause?.type,
      why: describeCause(change),
      run: run === undefined ? undefined : naming.run(run),
    };
  });
}
