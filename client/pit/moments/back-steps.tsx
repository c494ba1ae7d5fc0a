import { For, Show } from "solid-js";
import { valueText } from "#client/pit/names.ts";
import { operationText } from "#client/pit/operation-text.ts";
import { WorkCautions } from "#client/pit/work-cautions.tsx";
import { moments as words } from "#client/text/moments.ts";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import type { BackToMoment } from "#core/planning/back-to-moment.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";

/** The steps of a way back with what to mind at each, what they leave alone and why, and the word that it is done. */
export function BackSteps(props: { plan: BackToMoment; onDone: () => void }) {
  const isMeant = makeOneTouch();
  const names = (paths: readonly AdjusterPath[]): string => paths.map(trade.adjuster).join(", ");
  return (
    <>
      <For each={props.plan.blocked}>{(problem) => <p class="problem">{trade.limit(problem)}</p>}</For>
      <Show when={props.plan.disputed.length > 0}>
        <p>{words.leftOut(names(props.plan.disputed))}</p>
      </Show>
      <Show when={props.plan.unknownThen.length > 0}>
        <p>{words.unknownThen(names(props.plan.unknownThen))}</p>
      </Show>
      <Show when={props.plan.steps.length + props.plan.blocked.length + props.plan.unknownThen.length === 0}>
        <p>{words.already}</p>
      </Show>
      <Show when={props.plan.steps.length > 0}>
        <WorkCautions />
        <p>{words.order}</p>
        <ol class="stack">
          <For each={props.plan.steps}>
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
        <button type="button" class="main" onClick={(event) => isMeant(event.timeStamp) && props.onDone()}>
          {words.back}
        </button>
      </Show>
    </>
  );
}
