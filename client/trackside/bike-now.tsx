import { For, type JSX, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { trackside } from "#client/text/trackside.ts";
import type { PlaceView } from "./bike-view.ts";

/** What is on the bike now, in large values. */
export function BikeNow(props: { bike: string; places: readonly PlaceView[]; lock: JSX.Element }) {
  return (
    <section class="stack">
      <div class="bike-now-head">
        <h2>{trackside.start.onTheBike}</h2>
        {props.lock}
      </div>
      <p>{props.bike}</p>
      <For each={props.places}>
        {({ place, adjusters }) => (
          <div class="card">
            <h3>{common.places[place]}</h3>
            <dl class="bike-values">
              <For each={adjusters}>
                {(adjuster) => (
                  <div>
                    <dt>{common.adjusters[adjuster.found.adjuster.kind]}</dt>
                    <Show when={adjuster.claims.length === 0}>
                      <dd class="value">{adjuster.now}</dd>
                    </Show>
                    <Show when={adjuster.readAt}>{(readAt) => <dd class="standing small">{readAt()}</dd>}</Show>
                    <For each={adjuster.claims}>{(claim) => <dd class="value claim">{claim}</dd>}</For>
                    <Show when={adjuster.standing}>{(standing) => <dd class="standing">{standing()}</dd>}</Show>
                  </div>
                )}
              </For>
            </dl>
          </div>
        )}
      </For>
    </section>
  );
}
