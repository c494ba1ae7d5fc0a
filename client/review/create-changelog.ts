/** The changelog screen: which weekend, which rider, and how much of it is in view. */
import { useSearchParams } from "@solidjs/router";
import { type Accessor, createMemo, createSignal } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { today } from "#client/widgets/today.ts";
import { type AdjusterPath, adjusterPaths } from "#core/team/adjuster.ts";
import { mountedAdjusters, type RiderBike, riderBikes } from "#core/team/roster.ts";
import { currentWeekend, weekends } from "#core/weekend/programme.ts";
import { type ChangeLine, changelogView } from "./changelog-view.ts";

const LINES_AT_A_TIME = 60;

export interface ChangelogScreenState {
  readonly weekendChoices: Accessor<ReturnType<typeof weekends>>;
  readonly weekendId: Accessor<string | undefined>;
  readonly riders: Accessor<readonly RiderBike[]>;
  readonly riderId: Accessor<string | undefined>;
  /** The adjusters that the bikes of the chosen riders have. */
  readonly adjusters: Accessor<readonly AdjusterPath[]>;
  readonly path: Accessor<AdjusterPath | undefined>;
  readonly lines: Accessor<readonly ChangeLine[]>;
  readonly count: Accessor<number>;
  /** How many more {@link showMore} brings; 0 when all are in view. */
  readonly next: Accessor<number>;
  readonly showMore: () => void;
  readonly choose: (choice: { weekend?: string; rider?: string; adjuster?: string }) => void;
}

/** Long lists are slow to paint on a phone: a part of them is shown until more is asked for. */
export function createChangelog(): ChangelogScreenState {
  const device = useDevice();
  const [params, setParams] = useSearchParams<{ weekend: string; rider: string; adjuster: string }>();
  const [shown, setShown] = createSignal(LINES_AT_A_TIME);
  const weekendChoices = createMemo(() => weekends(device.ledger()));
  const weekendId = () => params.weekend ?? currentWeekend(device.ledger(), today())?.id;
  const riders = createMemo(() => riderBikes(device.ledger()));
  const riderId = () => riders().find((mounted) => mounted.riderId === params.rider)?.riderId;
  const adjusters = createMemo(() => {
    const chosen = riders().filter((mounted) => riderId() === undefined || mounted.riderId === riderId());
    const there = new Set(chosen.flatMap(({ parts }) => mountedAdjusters(parts).map(({ path }) => path)));
    return adjusterPaths.filter((path) => there.has(path));
  });
  const path = () => adjusterPaths.find((candidate) => candidate === params.adjuster);
  const all = createMemo(() => {
    const id = weekendId();
    return id === undefined ? [] : changelogView(device.ledger(), id, riderId(), path());
  });
  return {
    weekendChoices,
    weekendId,
    riders,
    riderId,
    adjusters,
    path,
    lines: createMemo(() => all().slice(0, shown())),
    count: () => all().length,
    next: () => Math.min(LINES_AT_A_TIME, Math.max(0, all().length - shown())),
    showMore: () => setShown((count) => count + LINES_AT_A_TIME),
    choose: (choice) => {
      setShown(LINES_AT_A_TIME);
      setParams(choice, { replace: true });
    },
  };
}
