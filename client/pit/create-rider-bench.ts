/** All that the bench of one rider shows, derived from the ledger, and the acts on it. */
import { type Accessor, createMemo } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { trade } from "#client/text/trade.ts";
import { type Current, settledValue } from "#core/ledger/ledger.ts";
import type { Occasion } from "#core/planning/entries.ts";
import { type SetupSheet, setupSheet } from "#core/planning/setup-sheet.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type RiderBike, riderBike } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { type LoggedRun, loggedRuns } from "#core/weekend/runs.ts";
import type { Setting } from "#core/weekend/setting.ts";
import type { ChosenSession } from "./chosen-session.ts";
import { type Acts, createActs } from "./create-acts.ts";
import { benchOccasion } from "./occasion.ts";

export interface RiderBench {
  readonly device: Device;
  readonly chosen: ChosenSession;
  readonly acts: Acts;
  readonly mounted: Accessor<RiderBike | undefined>;
  readonly settings: Accessor<ReadonlyMap<AdjusterPath, Current<Setting>>>;
  readonly sheet: Accessor<SetupSheet | undefined>;
  /** Why there is no sheet. */
  readonly sheetProblem: Accessor<string | undefined>;
  /** Where and for what a setting is made now, for the chosen session. */
  readonly occasion: Accessor<Occasion | undefined>;
  /** The same for another session of the weekend: advice on a run counts from the bench of the run's session. */
  occasionFor(sessionId: string | undefined): Occasion | undefined;
  /** The runs of the weekend: those to answer first, each group newest first. */
  readonly runs: Accessor<readonly LoggedRun[]>;
  readonly toAnswer: Accessor<number>;
  readonly reported: Accessor<readonly AdjusterPath[]>;
  readonly disputed: Accessor<readonly AdjusterPath[]>;
}

/** The bench of the rider that `riderId` tells. */
export function createRiderBench(device: Device, chosen: ChosenSession, riderId: Accessor<string>): RiderBench {
  const mounted = createMemo(() => riderBike(device.ledger(), riderId()));
  const settings = createMemo((): ReadonlyMap<AdjusterPath, Current<Setting>> => {
    const bike = mounted();
    return bike ? settingsOnBike(device.ledger(), bike) : new Map();
  });
  const result = createMemo(() =>
    setupSheet(device.ledger(), chosen.programme()?.weekendId ?? "", chosen.session()?.id ?? "", riderId()),
  );
  const sheet = (): SetupSheet | undefined => {
    const found = result();
    return found.ok ? found.sheet : undefined;
  };
  const runs = createMemo(() => {
    const weekendId = chosen.programme()?.weekendId;
    const logged = weekendId === undefined ? [] : loggedRuns(device.ledger(), weekendId, riderId());
    return [...logged.filter(({ decision }) => !decision), ...logged.filter(({ decision }) => decision)];
  });
  const occasionFor = (sessionId: string | undefined): Occasion | undefined => {
    const bike = mounted();
    const plan = chosen.programme();
    return bike && plan && benchOccasion(bike, settings(), plan, sessionId);
  };
  const pathsWhere = (test: (current: Current<Setting>) => boolean) => () =>
    [...settings()].filter(([, current]) => test(current)).map(([path]) => path);
  return {
    device,
    chosen,
    acts: createActs(device),
    mounted,
    settings,
    sheet,
    sheetProblem: () => {
      const found = result();
      return found.ok ? undefined : trade.sheetProblem(found.problem);
    },
    occasion: createMemo(() => occasionFor(chosen.session()?.id)),
    occasionFor,
    runs,
    toAnswer: () => runs().filter(({ decision }) => !decision).length,
    reported: createMemo(pathsWhere((current) => settledValue(current)?.standing === "reported")),
    disputed: createMemo(pathsWhere(({ state }) => state === "disputed")),
  };
}
