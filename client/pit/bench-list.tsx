import { For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { screenAwake } from "#client/text/screen-awake.ts";
import { trade } from "#client/text/trade.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { createKeepAwake, pageScreen } from "#client/widgets/keep-awake.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import type { BenchStep } from "#core/advice/bench-sequence.ts";
import type { SetupSheet } from "#core/planning/setup-sheet.ts";
import { tickEntries } from "./bench-entries.ts";
import { BenchStepRow } from "./bench-step-row.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { valueText } from "./names.ts";
import { WorkCautions } from "./work-cautions.tsx";

/** What to set, in the safe order, to be ticked off. */
export function BenchList(props: { bench: RiderBench; sheet: SetupSheet }) {
  const steps = () => props.sheet.sequence.steps;
  const awake = createKeepAwake(pageScreen(), () => steps().length > 0);
  const isMeant = makeOneTouch();
  const tick = (done: readonly BenchStep[], said: string): void => {
    const occasion = props.bench.occasion();
    if (occasion) props.bench.acts.write(tickEntries(props.sheet, occasion, done), said);
  };
  const tickOne = (step: BenchStep, moment: number): void => {
    if (isMeant(moment)) tick([step], pit.bench.ticked(trade.adjuster(step.path), valueText(step.to)));
  };
  return (
    <section class="stack">
      <h2>{pit.bench.title}</h2>
      <WorkCautions />
      <Show when={props.sheet.sequence.blocked.length > 0}>
        <div class="card alarm">
          <strong>{pit.bench.blocked}</strong>
          <ul>
            <For each={props.sheet.sequence.blocked}>{(problem) => <li>{trade.limit(problem)}</li>}</For>
          </ul>
        </div>
      </Show>
      <Show when={steps().length > 0} fallback={<p>{pit.bench.none}</p>}>
        <p>{pit.bench.order}</p>
        <p class="small">{screenAwake[awake()]}</p>
        <ol class="plain stack">
          <EachByKey each={steps()} keyOf={({ path }) => path}>
            {(step, index) => (
              <BenchStepRow step={step()} number={index() + 1} onTick={(moment) => tickOne(step(), moment)} />
            )}
          </EachByKey>
        </ol>
        <button type="button" class="main" onClick={() => tick(steps(), pit.bench.tickedAll(steps().length))}>
          {pit.bench.all}
        </button>
      </Show>
    </section>
  );
}
