import { A } from "@solidjs/router";
import { createSignal, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { BenchList } from "./bench-list.tsx";
import { ByHandModal } from "./by-hand-modal.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { DisputeCard } from "./dispute-card.tsx";
import { GoBack } from "./go-back.tsx";
import { ReportedCard } from "./reported-card.tsx";
import { SentBackCards } from "./sent-back-cards.tsx";
import { ServiceSection } from "./service-section.tsx";
import { SetupSheetView } from "./setup-sheet-view.tsx";

/** What is to do on the bike, then the whole sheet. */
export function BenchSection(props: { bench: RiderBench }) {
  const [byHand, setByHand] = createSignal<AdjusterPath>();
  return (
    <section class="stack pit-part-bench">
      <SentBackCards bench={props.bench} />
      <For each={props.bench.disputed()}>{(path) => <DisputeCard bench={props.bench} path={path} />}</For>
      <For each={props.bench.reported()}>
        {(path) => <ReportedCard bench={props.bench} path={path} onSetByHand={setByHand} />}
      </For>
      <Show
        when={props.bench.sheet()}
        fallback={
          <div class="stack">
            <p>{props.bench.sheetProblem()}</p>
            <A href={`/pit/course${props.bench.chosen.query()}`} class="button main">
              {pit.board.enterCourse}
            </A>
          </div>
        }
      >
        {(sheet) => (
          <>
            <BenchList bench={props.bench} sheet={sheet()} />
            <SetupSheetView bench={props.bench} sheet={sheet()} onSetByHand={setByHand} />
            <GoBack bench={props.bench} sheet={sheet()} />
          </>
        )}
      </Show>
      <ServiceSection bench={props.bench} />
      <Show when={byHand()} keyed>
        {(path) => <ByHandModal bench={props.bench} path={path} onClose={() => setByHand(undefined)} />}
      </Show>
    </section>
  );
}
