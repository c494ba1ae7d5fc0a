/** A disputed adjuster while it is shown: its claims, and settling it. */
import type { Accessor } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { checkValue } from "#core/advice/limits.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type MountedAdjuster, mountedAdjuster } from "#core/team/roster.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { type ClaimLine, claimLines, settledByClaim, settledByReading } from "./dispute-claims.ts";

export interface DisputeState {
  readonly claims: Accessor<readonly ClaimLine[]>;
  readonly found: Accessor<MountedAdjuster | undefined>;
  /** Somebody looked, and a claim is right. */
  settle(claim: Setting): void;
  /** Somebody looked, and read another value. */
  settleReading(reading: TypedQuantity | undefined): void;
}

/** The dispute about `path` on this bench. */
export function createDispute(bench: RiderBench, path: AdjusterPath): DisputeState {
  const { device, acts } = bench;
  const found = (): MountedAdjuster | undefined => {
    const mounted = bench.mounted();
    return mounted && mountedAdjuster(mounted.parts, path);
  };
  const write = (setting: Setting): void => {
    const mounted = bench.mounted();
    if (!mounted) return;
    const result = device.resolve(settingKind, settingKey(mounted.riderId, mounted.bikeId, path), setting);
    acts.wrote(result, pit.disputes.settled(trade.adjuster(path), formatQuantity(setting.quantity)));
  };
  return {
    claims: () => {
      const current = bench.settings().get(path);
      return current?.state === "disputed" ? claimLines(device.ledger(), current.claims) : [];
    },
    found,
    settle: (claim) => {
      const occasion = bench.occasion();
      if (occasion) write(settledByClaim(claim, occasion));
    },
    settleReading: (quantity) => {
      const occasion = bench.occasion();
      if (!occasion) return;
      if (quantity === undefined) return acts.refuse(trade.entryProblem({ type: "no value", path }));
      const problem = checkValue(occasion.mounted, path, quantity, occasion.onTheBike);
      if (problem) return acts.refuse(trade.limit(problem));
      write(settledByReading(quantity, occasion));
    },
  };
}
