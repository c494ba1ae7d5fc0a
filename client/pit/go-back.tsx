import { createMemo, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import type { SetupSheet } from "#core/planning/setup-sheet.ts";
import { type GoBackTo, goBackEntries, goBackPlan } from "./bench-entries.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { valueText } from "./names.ts";

/** Going back with the whole bike, with the steps in view before. */
export function GoBack(props: { bench: RiderBench; sheet: SetupSheet }) {
  return (
    <section class="stack">
      <h2>{pit.goBack.title}</h2>
      <div class="pit-go-back">
        <Way {...props} to="weekend" label={pit.goBack.weekend} done={pit.goBack.doneWeekend} />
        <Way {...props} to="baseline" label={pit.goBack.baseline} done={pit.goBack.doneBaseline} />
      </div>
    </section>
  );
}

function Way(props: {
  bench: RiderBench;
  sheet: SetupSheet;
  to: GoBackTo;
  label: string;
  done: (count: number) => string;
}) {
  const plan = createMemo(() => goBackPlan(props.sheet, props.bench.occasion()?.onTheBike ?? {}, props.to));
  const go = (): void => {
    const occasion = props.bench.occasion();
    if (occasion)
      props.bench.acts.write(goBackEntries(props.sheet, occasion, props.to), props.done(plan().steps.length));
  };
  return (
    <div class="card stack">
      <Show
        when={plan().steps.length + plan().blocked.length > 0}
        fallback={
          <p>
            <strong>{props.label}.</strong> {pit.goBack.already}
          </p>
        }
      >
        <button type="button" onClick={go}>
          {props.label}
        </button>
        <details>
          <summary class="pit-summary">{pit.goBack.steps(plan().steps.length)}</summary>
          <ol>
            <For each={plan().steps}>
              {(step) => (
                <li>
                  {trade.adjuster(step.path)}: <strong>{valueText(step.to)}</strong>{" "}
                  {step.from ? pit.bench.from(valueText(step.from)) : pit.bench.fromUnknown}
                </li>
              )}
            </For>
          </ol>
        </details>
        <For each={plan().blocked}>{(problem) => <p class="problem">{trade.limit(problem)}</p>}</For>
      </Show>
      <Show when={plan().leftOut.length > 0}>
        <p>{pit.goBack.leftOut(plan().leftOut.map(trade.adjuster).join(", "))}</p>
      </Show>
    </div>
  );
}
