import { For, Show } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { pit } from "#client/text/pit.ts";
import { spareBike } from "#client/text/spare-bike.ts";
import { Choice } from "#client/widgets/choice.tsx";
import { OptionSelect } from "#client/widgets/option-select.tsx";
import { createMove, type PartMoving } from "./create-move.ts";
import { airs, swaps } from "./move-draft.ts";

/** One part: where it was and what was set on it, and moving it to another bike. */
export function MoveSection(props: { bench: RiderBench; riderId: string }) {
  const move = createMove(props.bench, () => props.riderId);
  const words = spareBike.move;
  return (
    <section class="stack">
      <h2>{words.title}</h2>
      <OptionSelect
        label={words.part}
        options={move.parts()}
        chosen={move.draft().partId}
        onChoose={(id) => move.choosePart(id)}
      />
      <History move={move} />
      <OptionSelect
        label={words.to}
        options={move.destinations()}
        chosen={move.draft().to}
        placeholder={words.choose}
        onChoose={(id) => move.chooseTo(id)}
      />
      <Show when={move.draft().to}>
        <Show when={move.there()}>
          {(there) => (
            <Choice
              legend={words.swapLegend(there())}
              options={swaps}
              labelOf={(swap) => words.swap[swap]}
              value={move.draft().swap}
              onChange={(swap) => move.chooseSwap(swap)}
              required
            />
          )}
        </Show>
        <Show when={move.asksForAir()}>
          <Choice
            legend={words.airLegend}
            options={airs}
            labelOf={(air) => words.air[air]}
            value={move.draft().air}
            onChange={(air) => move.chooseAir(air)}
          />
        </Show>
        <p>{words.goesAlong}</p>
        <div class="caution" role="note">
          <strong>{pit.bench.cautionsTitle}</strong>
          <ul>
            <For each={words.cautions}>{(sentence) => <li>{sentence}</li>}</For>
            <li>{spareBike.firstRide}</li>
          </ul>
        </div>
        <div>
          <button type="button" class="main" onClick={() => move.save()}>
            {words.save}
          </button>
        </div>
      </Show>
    </section>
  );
}

function History(props: { move: PartMoving }) {
  const words = spareBike.move;
  return (
    <details>
      <summary class="pit-summary">{words.historyTitle(props.move.chosen()?.part.name ?? "")}</summary>
      <For each={props.move.history()} fallback={<p>{words.placeInDispute}</p>}>
        {(stay) => (
          <>
            <h3>{stay.title}</h3>
            <p>{stay.count}</p>
            <ul>
              <For each={stay.changes}>{(change) => <li>{change}</li>}</For>
            </ul>
            <p>{stay.more}</p>
          </>
        )}
      </For>
    </details>
  );
}
