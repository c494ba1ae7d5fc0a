import { For } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import type { BenchStep } from "#core/advice/bench-sequence.ts";
import { valueText } from "./names.ts";
import { operationText } from "./operation-text.ts";

/** Steps at the bench in their order, each with what to mind and what the hands do. */
export function StepList(props: { steps: readonly BenchStep[] }) {
  return (
    <ol class="stack">
      <EachByKey each={props.steps} keyOf={({ path }) => path}>
        {(step) => (
          <li>
            {trade.adjuster(step().path)}: <strong>{valueText(step().to)}</strong>{" "}
            {step().from ? pit.bench.from(valueText(step().from)) : pit.bench.fromUnknown}
            <ul class="plain small">
              <For each={step().cautions}>{(caution) => <li>{pit.bench.stepCautions[caution]}</li>}</For>
            </ul>
            <details>
              <summary class="pit-summary">{pit.bench.how(step().operations.length)}</summary>
              <ol>
                <For each={step().operations}>{(operation) => <li>{operationText(operation)}</li>}</For>
              </ol>
            </details>
          </li>
        )}
      </EachByKey>
    </ol>
  );
}
