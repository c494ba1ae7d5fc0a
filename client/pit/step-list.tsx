import { For } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import type { BenchStep } from "#core/advice/bench-sequence.ts";
import { valueText } from "./names.ts";
import { operationText } from "./operation-text.ts";

/** Steps at the bench in their order, each with what to mind and what the hands do. */
export function StepList(props: { steps: readonly BenchStep[] }) {
  return (
    <ol class="stack">
      <For each={props.steps}>
        {(step) => (
          <li>
            {trade.adjuster(step.path)}: <strong>{valueText(step.to)}</strong>{" "}
            {step.from ? pit.bench.from(valueText(step.from)) : pit.bench.fromUnknown}
            <ul class="plain small">
              <For each={step.cautions}>{(caution) => <li>{pit.bench.stepCautions[caution]}</li>}</For>
            </ul>
            <details>
              <summary class="pit-summary">{pit.bench.how(step.operations.length)}</summary>
              <ol>
                <For each={step.operations}>{(operation) => <li>{operationText(operation)}</li>}</For>
              </ol>
            </details>
          </li>
        )}
      </For>
    </ol>
  );
}
