import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { trackside } from "#client/text/trackside.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { bikeView } from "./bike-view.ts";

/** What is on the bike now, in large values. */
export function BikeNow(props: { mounted: RiderBike }) {
  const device = useDevice();
  const places = createMemo(() => bikeView(device.ledger(), props.mounted));
  return (
    <section class="stack">
      <h2>{trackside.start.onTheBike}</h2>
      <p>{props.mounted.bike.name}</p>
      <For each={places()}>
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
