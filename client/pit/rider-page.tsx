import { A, useParams, useSearchParams } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { createRainLock } from "#client/widgets/create-rain-lock.ts";
import { RainLockButton, RainLocked } from "#client/widgets/rain-lock.tsx";
import { BenchSection } from "./bench-section.tsx";
import { changeLines } from "./change-lines.ts";
import { ChangelogSection } from "./changelog-section.tsx";
import { createChosenSession } from "./chosen-session.ts";
import { createRiderBench } from "./create-rider-bench.ts";
import { FeedbackSection } from "./feedback-section.tsx";
import { lockedBench } from "./locked-bench.ts";
import { PitGate } from "./pit-gate.tsx";
import { RiderAbout } from "./rider/rider-about.tsx";
import { RiderTabs, tabOf } from "./rider-tabs.tsx";
import { UndoStrip } from "./undo-strip.tsx";
import { WorkCautions } from "./work-cautions.tsx";

/** One rider's bench: what to set, what the rider said, and what was changed. */
export function RiderPage() {
  const device = useDevice();
  const params = useParams<{ riderId: string }>();
  const [search] = useSearchParams<{ view: string }>();
  const chosen = createChosenSession(device);
  const bench = createRiderBench(device, chosen, () => params.riderId ?? "");
  const lines = createMemo(() => changeLines(device.ledger(), params.riderId ?? ""));
  const lock = createRainLock();
  const values = createMemo(() => {
    const sheet = bench.sheet();
    return sheet ? lockedBench(sheet) : [];
  });
  const tab = () => tabOf(search.view);
  return (
    <PitGate>
      <Show
        when={bench.mounted()}
        fallback={<p>{trade.sheetProblem({ type: "unknown rider", riderId: params.riderId ?? "" })}</p>}
      >
        {(mounted) => (
          <RainLocked
            lock={lock}
            title={mounted().rider.name}
            groups={values()}
            caution={
              <Show when={bench.sheet()?.sequence.steps.length}>
                <WorkCautions always />
              </Show>
            }
          >
            <div class="pit-rider-head">
              <A href={`/pit${chosen.query()}`} class="button">
                {pit.backToTeam}
              </A>
              <Show when={bench.sheet()}>
                <RainLockButton lock={lock} />
              </Show>
              <h1>
                {mounted().rider.name}{" "}
                <Show when={mounted().rider.plate}>
                  {(plate) => <span class="tag">{pit.board.plate(plate())}</span>}
                </Show>
              </h1>
            </div>
            <RiderAbout bench={bench} mounted={mounted()} />
            <UndoStrip bench={bench} />
            <RiderTabs bench={bench} changes={lines().length} chosen={tab()} />
            <div class="pit-rider" data-tab={tab()}>
              <BenchSection bench={bench} />
              <div class="pit-rider-side">
                <FeedbackSection bench={bench} />
                <ChangelogSection bench={bench} riderId={mounted().riderId} lines={lines()} />
              </div>
            </div>
          </RainLocked>
        )}
      </Show>
    </PitGate>
  );
}
