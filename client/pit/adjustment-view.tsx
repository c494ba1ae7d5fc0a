import { For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { Caution } from "#client/widgets/caution.tsx";
import type { Adjustment, AdviceInput } from "#core/advice/adjustment.ts";
import { adjustmentEntries } from "#core/planning/entries.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { adjustmentSizeText, causeLine, settingLine } from "./adjustment-text.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { ForceChart } from "./force-chart.tsx";
import { valueText } from "./names.ts";
import { PredictionTable } from "./prediction-table.tsx";

/** One adjustment with all that is needed to judge it, and taking it. */
export function AdjustmentView(props: {
  bench: RiderBench;
  logged: LoggedRun;
  input: AdviceInput;
  adjustment: Adjustment;
}) {
  const setting = () => props.adjustment.setting;
  const rule = () => trade.rule(props.adjustment.rule);
  const put = (): void => {
    const occasion = props.bench.occasionFor(props.logged.run.session);
    if (!occasion) return;
    const done = pit.advice.putDone(trade.adjuster(setting().path), valueText(setting().to));
    props.bench.acts.write(adjustmentEntries(occasion, props.logged, props.adjustment), done);
  };
  return (
    <div class="stack">
      <p class="pit-adjustment">
        <span class="pit-adjustment-name">{trade.adjuster(setting().path)}</span>
        <span class="value-large">{adjustmentSizeText(setting())}</span>
        <span class="value">
          {valueText(setting().from)} → {valueText(setting().to)}
        </span>
      </p>
      <Show when={props.adjustment.coupled.length > 0}>
        <p>
          {pit.advice.coupled}: <strong>{props.adjustment.coupled.map(settingLine).join(", ")}</strong>
        </p>
      </Show>
      <p>{causeLine(props.adjustment)}.</p>
      <p class="row">
        <span class="tag">{pit.advice.sizedBy[props.adjustment.sizedBy]}</span>
        <span class={props.adjustment.fitted ? "tag" : "tag strong"}>
          {props.adjustment.fitted ? pit.advice.fitted : pit.advice.notFitted}
        </span>
      </p>
      <dl class="pit-why">
        <dt>{pit.advice.reason}</dt>
        <dd>{rule()?.reason}</dd>
        <dt>{pit.advice.notice}</dt>
        <dd>{rule()?.notice}</dd>
        <dt>{pit.advice.otherwise}</dt>
        <dd>{rule()?.otherwise}</dd>
        <Show when={props.adjustment.limits.length > 0}>
          <dt>{pit.advice.limits}</dt>
          <For each={props.adjustment.limits}>{(limit) => <dd>{trade.hindrance(limit)}</dd>}</For>
        </Show>
      </dl>
      <PredictionTable adjustment={props.adjustment} />
      <ForceChart input={props.input} adjustment={props.adjustment} />
      <p class="small">{pit.advice.provenance(trade.provenances[props.adjustment.provenance])}</p>
      <Caution>
        {pit.bench.cautions[0]} {pit.bench.cautions[2]}
      </Caution>
      <button type="button" class="main" onClick={put}>
        {pit.advice.put}
      </button>
    </div>
  );
}
