import { createSignal, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { Caution } from "#client/widgets/caution.tsx";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { createService } from "./create-service.ts";
import type { ServicePlace } from "./service-lines.ts";
import { ServiceModal } from "./service-modal.tsx";
import { ServicePart } from "./service-part.tsx";

/** How many hours each part was ridden since its service, and writing a service down. */
export function ServiceSection(props: { bench: RiderBench }) {
  const service = createService(props.bench);
  const [open, setOpen] = createSignal<ServicePlace>();
  return (
    <section class="stack">
      <h2>{pit.service.title}</h2>
      <Caution>{pit.service.caution}</Caution>
      <div class="pit-service">
        <EachByKey each={service.parts()} keyOf={({ place }) => place}>
          {(part) => <ServicePart part={part()} onDone={() => setOpen(part().place)} />}
        </EachByKey>
      </div>
      <details>
        <summary class="pit-summary">{pit.service.counting}</summary>
        <ul>
          <For each={service.counting()}>{(sentence) => <li>{sentence}</li>}</For>
        </ul>
      </details>
      <Show when={open()} keyed>
        {(place) => <ServiceModal bench={props.bench} place={place} onClose={() => setOpen(undefined)} />}
      </Show>
    </section>
  );
}
