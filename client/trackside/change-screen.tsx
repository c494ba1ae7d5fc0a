import { A, useNavigate } from "@solidjs/router";
import { type Accessor, createMemo, createSignal, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { trackside } from "#client/text/trackside.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { Problem } from "#client/widgets/problem.tsx";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { bikeView } from "./bike-view.ts";
import type { RiderAtHand } from "./create-rider-at-hand.ts";
import { NewValue } from "./new-value.tsx";
import { writeOwnChange } from "./own-change.ts";
import { RiderGate } from "./rider-gate.tsx";

/** "I changed something myself": which adjuster, what it is at now, saved. */
export function ChangeScreen() {
  return <RiderGate>{(at, mounted) => <ChangeForm at={at} mounted={mounted} />}</RiderGate>;
}

function ChangeForm(props: { at: RiderAtHand; mounted: Accessor<RiderBike> }) {
  const device = useDevice();
  const navigate = useNavigate();
  const [path, setPath] = createSignal<AdjusterPath>();
  const [problem, setProblem] = createSignal<string>();
  const places = createMemo(() => bikeView(device.ledger(), props.mounted()));
  const chosen = () =>
    places()
      .flatMap(({ adjusters }) => adjusters)
      .find((adjuster) => adjuster.path === path());
  const choose = (next: AdjusterPath | undefined): void => {
    setProblem(undefined);
    setPath(next);
  };
  const save = (value: number | undefined): void => {
    const plan = props.at.plan();
    const adjuster = chosen();
    if (!adjuster) return;
    if (!plan) return void setProblem(trackside.noWeekend);
    if (value === undefined) return void setProblem(trackside.change.empty);
    const result = writeOwnChange(device, {
      mounted: props.mounted(),
      weekendId: plan.weekendId,
      sessionId: props.at.session()?.id,
      surroundings: props.at.surroundings(),
      found: adjuster.found,
      value,
    });
    if (result.ok) navigate(`/trackside${props.at.query()}`, { state: { saved: result.sentence } });
    else setProblem(result.sentence);
  };
  return (
    <div class="stack">
      <h1>{trackside.change.title}</h1>
      <Show
        when={chosen()}
        fallback={
          <>
            <p>{trackside.change.which}</p>
            <div class="columns">
              <EachByKey each={places()} keyOf={({ place }) => place}>
                {(there) => (
                  <section class="stack">
                    <h2>{common.places[there().place]}</h2>
                    <EachByKey each={there().adjusters} keyOf={(adjuster) => adjuster.path}>
                      {(adjuster) => (
                        <button type="button" class="adjuster-button" onClick={() => choose(adjuster().path)}>
                          <span>{common.adjusters[adjuster().found.adjuster.kind]}</span>
                          <span class="value">{adjuster().now}</span>
                        </button>
                      )}
                    </EachByKey>
                  </section>
                )}
              </EachByKey>
            </div>
            <A class="button" href={`/trackside${props.at.query()}`}>
              {trackside.change.back}
            </A>
          </>
        }
      >
        {(adjuster) => (
          <>
            <NewValue adjuster={adjuster()} onSave={save} />
            <Problem sentence={problem()} />
            <button type="button" onClick={() => choose(undefined)}>
              {trackside.change.chooseAnother}
            </button>
          </>
        )}
      </Show>
    </div>
  );
}
