import { Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { RunCard } from "./run-card.tsx";

/** The rider's runs of the weekend: those to answer first. */
export function FeedbackSection(props: { bench: RiderBench }) {
  return (
    <section class="stack pit-part-feedback">
      <h2>{pit.feedback.title}</h2>
      <Show when={props.bench.runs().length > 0} fallback={<p>{pit.feedback.none}</p>}>
        <EachByKey each={props.bench.runs()} keyOf={({ id }) => id}>
          {(logged) => <RunCard bench={props.bench} logged={logged()} />}
        </EachByKey>
      </Show>
    </section>
  );
}
