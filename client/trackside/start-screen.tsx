import { A, useLocation } from "@solidjs/router";
import { type Accessor, createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { trackside } from "#client/text/trackside.ts";
import { createRainLock } from "#client/widgets/create-rain-lock.ts";
import { RainLockButton, RainLocked } from "#client/widgets/rain-lock.tsx";
import { WeekendChoice } from "#client/widgets/weekend-choice.tsx";
import type { RiderBike } from "#core/team/roster.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { BikeNow } from "./bike-now.tsx";
import { bikeView } from "./bike-view.ts";
import type { RiderAtHand } from "./create-rider-at-hand.ts";
import { lockedBike } from "./locked-bike.ts";
import { RiderGate } from "./rider-gate.tsx";
import { RunCard } from "./run-card.tsx";
import { SessionChoice } from "./session-choice.tsx";
import { UndoLine } from "./undo-line.tsx";

const RUNS_IN_VIEW = 3;

/** What the rider opens between two runs. */
export function StartScreen() {
  return <RiderGate>{(at, mounted) => <Start at={at} mounted={mounted} />}</RiderGate>;
}

function Start(props: { at: RiderAtHand; mounted: Accessor<RiderBike> }) {
  const device = useDevice();
  const location = useLocation<{ saved: string; said: readonly string[] }>();
  const runs = createMemo(() => {
    const weekendId = props.at.plan()?.weekendId;
    return weekendId === undefined ? [] : loggedRuns(device.ledger(), weekendId, props.mounted().riderId);
  });
  const lock = createRainLock();
  const places = createMemo(() => bikeView(device.ledger(), props.mounted()));
  const earlier = () => runs().slice(RUNS_IN_VIEW);
  return (
    <RainLocked lock={lock} title={trackside.start.onTheBike} groups={lockedBike(places())}>
      <div class="columns">
        <div class="stack">
          <h1>{trackside.title(props.mounted().rider.name)}</h1>
          <div aria-live="polite">
            <Show when={location.state?.saved}>
              {(sentence) => (
                <div class="saved">
                  <strong>{sentence()}</strong>
                  <For each={location.state?.said ?? []}>{(line) => <div>{line}</div>}</For>
                </div>
              )}
            </Show>
          </div>
          <UndoLine riderId={props.mounted().riderId} />
          <SessionChoice at={props.at} />
          <Show when={props.at.session()}>
            <A class="button main" href={`/trackside/run${props.at.query()}`}>
              {trackside.start.logRun}
            </A>
            <A class="button tall" href={`/trackside/change${props.at.query()}`}>
              {trackside.start.changedSomething}
            </A>
          </Show>
          <section class="stack start-section">
            <h2>{trackside.start.yourRuns}</h2>
            <Show when={runs().length > 0} fallback={<p>{trackside.start.noRuns}</p>}>
              <For each={runs().slice(0, RUNS_IN_VIEW)}>
                {(logged) => <RunCard logged={logged} plan={props.at.plan()} />}
              </For>
              <Show when={earlier().length > 0}>
                <details class="stack">
                  <summary>{trackside.start.earlier(earlier().length)}</summary>
                  <For each={earlier()}>{(logged) => <RunCard logged={logged} plan={props.at.plan()} />}</For>
                </details>
              </Show>
            </Show>
          </section>
          <WeekendChoice
            label={trackside.choose.weekend}
            weekends={props.at.weekendChoices()}
            value={props.at.plan()?.weekendId}
            onChange={props.at.chooseWeekend}
          />
        </div>
        <BikeNow bike={props.mounted().bike.name} places={places()} lock={<RainLockButton lock={lock} />} />
      </div>
    </RainLocked>
  );
}
