import { For } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import type { BenchStep } from "#core/advice/bench-sequence.ts";
import { valueText } from "./names.ts";
import { operationText } from "./operation-text.ts";

/** One step at the bench: what, from where to where, what to mind, and the tick. */
export function BenchStepRow(props: { step: BenchStep; number: number; onTick: (moment: number) => void }) {
  return (
    <li class="card pit-step">
      <h3>
        {props.number}. {trade.adjuster(props.step.path)}
      </h3>
      <p class="pit-step-values">
        <span class="value">{valueText(props.step.to)}</span>{" "}
        <span>{props.step.from ? pit.bench.from(valueText(props.step.from)) : pit.bench.fromUnknown}</span>
      </p>
      <button
        type="button"
        class="pit-tick"
        aria-label={pit.bench.tickLabel(trade.adjuster(props.step.path), valueText(props.step.to))}
        onClick={(event) => props.onTick(event.timeStamp)}
      >
        {pit.bench.tick}
      </button>
      <details class="pit-step-how">
        <summary>{pit.bench.how(props.step.operations.length)}</summary>
        <ol>
          <For each={props.step.operations}>{(operation) => <li>{operationText(operation)}</li>}</For>
        </ol>
      </details>
      <ul class="plain small pit-step-cautions">
        <For each={props.step.cautions}>{(caution) => <li>{pit.bench.stepCautions[caution]}</li>}</For>
      </ul>
    </li>
  );
}
