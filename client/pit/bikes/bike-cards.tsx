import { For, Show } from "solid-js";
import { spareBike as words } from "#client/text/spare-bike.ts";
import { Caution } from "#client/widgets/caution.tsx";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import type { Bikes } from "./create-bikes.ts";

/** The rider's bikes, which of them is ridden, and what of them somebody has to look at. */
export function BikeCards(props: { bikes: Bikes }) {
  const isMeant = makeOneTouch();
  return (
    <section class="stack">
      <EachByKey each={props.bikes.disputes()} keyOf={({ id }) => id}>
        {(dispute) => (
          <article class="card alarm stack">
            <h2>{words.disputes.title(dispute().place, dispute().mounted.bike.name)}</h2>
            <p>{words.disputes.about}</p>
            <EachByKey each={dispute().claims} keyOf={({ partId }) => partId}>
              {(claim) => (
                <div class="stack">
                  <ul>
                    <For each={claim().said}>{(sentence) => <li>{sentence}</li>}</For>
                  </ul>
                  <div class="pit-actions">
                    <button
                      type="button"
                      onClick={(event) => isMeant(event.timeStamp) && props.bikes.settle(dispute(), claim())}
                    >
                      {words.disputes.isOn(claim().name)}
                    </button>
                    <button
                      type="button"
                      onClick={(event) => isMeant(event.timeStamp) && props.bikes.settleAside(dispute(), claim())}
                    >
                      {words.disputes.isElsewhere(claim().name)}
                    </button>
                  </div>
                </div>
              )}
            </EachByKey>
          </article>
        )}
      </EachByKey>
      <h2>{words.ridden}</h2>
      <p>{words.riddenAbout}</p>
      <Caution>{words.firstRide}</Caution>
      <div class="pit-bikes">
        <EachByKey each={props.bikes.bikes()} keyOf={({ bikeId }) => bikeId}>
          {(bike) => (
            <article class="card stack">
              <div class="pit-row-head">
                <h3>{bike().name}</h3>
                <Show when={bike().isRidden}>
                  <span class="tag strong">{words.isRidden}</span>
                </Show>
              </div>
              <ul>
                <For each={bike().parts}>{(part) => <li>{part}</li>}</For>
              </ul>
              <Show when={!bike().isRidden}>
                <button type="button" onClick={(event) => isMeant(event.timeStamp) && props.bikes.ride(bike().bikeId)}>
                  {words.ride(bike().name)}
                </button>
              </Show>
            </article>
          )}
        </EachByKey>
      </div>
    </section>
  );
}
