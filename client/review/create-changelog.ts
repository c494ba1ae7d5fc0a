/** The changelog screen: which weekend, which rider, and how much of it is in view. */
import { useSearchParams } from "@solidjs/router";
import { type Accessor, createMemo, createSignal } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { today } from "#client/widgets/today.ts";
import { type RiderBike, riderBikes } from "#core/team/roster.ts";
import { currentWeekend, weekends } from "#core/weekend/programme.ts";
import { type ChangeLine, changelogView } from "./changelog-view.ts";

const LINES_AT_A_TIME = 60;

export interface ChangelogScreenState {
  readonly weekendChoices: Accessor<ReturnType<typeof weekends>>;
  readonly weekendId: Accessor<string | undefined>;
  readonly riders: Accessor<readonly RiderBike[]>;
  readonly riderId: Accessor<string | undefined>;
  readonly lines: Accessor<readonly ChangeLine[]>;
  readonly count: Accessor<number>;
  /** How many more {@link showMore} brings; 0 when all are in view. */
  readonly next: Accessor<number>;
  readonly showMore: () => void;
  readonly choose: (choice: { weekend?: string; rider?: string }) => void;
}

/** Long lists are slow to paint on a phone: a part of them is shown until more is asked for. */
export function createChangelog(): ChangelogScreenState {
  const device = useDevice();
  const [params, setParams] = useSearchParams<{ weekend: string; rider: string }>();
  const [shown, setShown] = createSignal(LINES_AT_A_TIME);
  const weekendChoices = createMemo(() => weekends(device.ledger()));
  const weekendId = () => params.weekend ?? currentWeekend(device.ledger(), today())?.id;
  const riders = createMemo(() => riderBikes(device.ledger()));
  const riderId = () => riders().find((mounted) => mounted.riderId === params.rider)?.riderId;
  const all = createMemo(() => {
    const id = weekendId();
    return id === undefined ? [] : changelogView(device.ledger(), id, riderId());
  });
  return {
    weekendChoices,
    weekendId,
    riders,
    riderId,
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
