import { For, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { differenceParts } from "#client/text/quantity-text.ts";
import { trade } from "#client/text/trade.ts";
import type { SetupSheet, SheetRow } from "#core/planning/setup-sheet.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { ReasonList } from "./reason-list.tsx";
import { RowActions } from "./row-actions.tsx";
import { rowFacts } from "./row-facts.ts";

/** One adjuster of the sheet: how far from the baseline, the values, how it stands, and why. */
export function SetupRowView(props: {
  bench: RiderBench;
  sheet: SetupSheet;
  path: AdjusterPath;
  onSetByHand: () => void;
}) {
  const row = () => props.sheet.rows.find(({ path }) => path === props.path);
  return <Show when={row()}>{(known) => <Row {...props} row={known()} />}</Show>;
}

function Row(props: { bench: RiderBench; sheet: SetupSheet; row: SheetRow; onSetByHand: () => void }) {
  const title = () => common.adjusters[props.row.found.adjuster.kind];
  return (
    <li class="pit-row">
      <div class="pit-row-head">
        <h4>{title()}</h4>
        <span class={props.row.state === "set" ? "tag" : "tag strong"}>{pit.sheet.states[props.row.state]}</span>
      </div>
      <div class="pit-row-body">
        <p class="pit-difference">
          <Show when={props.row.difference} fallback={<span>{pit.sheet.noDifference}</span>}>
            {(difference) => (
              <>
                <span class={difference().value === 0 ? "value" : "value-large"}>
                  {differenceParts(difference()).number}
                </span>{" "}
                <span class="unit">{differenceParts(difference()).unit}</span>
                <span class="small pit-difference-label">{pit.sheet.difference}</span>
              </>
            )}
          </Show>
        </p>
        <dl class="pit-facts">
          <For each={rowFacts(props.row, props.bench.occasion()?.onTheBike[props.row.path])}>
            {(fact) => (
              <div>
                <dt>{fact.label}</dt>
                <dd>{fact.text}</dd>
              </div>
            )}
          </For>
        </dl>
      </div>
      <For each={props.row.problems}>{(problem) => <p class="problem">{trade.setupProblem(problem)}</p>}</For>
      <details>
        <summary class="pit-summary">
          {props.row.reasons.length > 0 ? pit.sheet.why(props.row.reasons.length) : pit.sheet.whyNone}
        </summary>
        <ReasonList reasons={props.row.reasons} />
        <RowActions bench={props.bench} sheet={props.sheet} row={props.row} onSetByHand={props.onSetByHand} />
      </details>
    </li>
  );
}
