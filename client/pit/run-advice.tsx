import { A } from "@solidjs/router";
import { createMemo, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { Problem } from "#client/widgets/problem.tsx";
import type { Adjustment, Advice, AdviceInput } from "#core/advice/adjustment.ts";
import { adviceOnRun } from "#core/planning/run-advice.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { causeLine, settingLine } from "./adjustment-text.ts";
import { AdjustmentView } from "./adjustment-view.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { WhyNot } from "./why-not.tsx";

/** Advice on one run, or what is missing for it. */
export function RunAdvice(props: { bench: RiderBench; logged: LoggedRun }) {
  const result = createMemo(() => adviceOnRun(props.bench.device.ledger(), props.logged));
  const found = () => {
    const given = result();
    return given.ok ? given : undefined;
  };
  const missing = (): string => {
    const given = result();
    return given.ok ? "" : trade.sheetProblem(given.problem);
  };
  return (
    <Show
      when={found()}
      fallback={
        <div class="stack">
          <p>{missing()}</p>
          <A href={`/pit/course${props.bench.chosen.query()}`} class="button">
            {pit.board.enterCourse}
          </A>
        </div>
      }
    >
      {(given) => (
        <AdviceView bench={props.bench} logged={props.logged} input={given().input} advice={given().advice} />
      )}
    </Show>
  );
}

function AdviceView(props: { bench: RiderBench; logged: LoggedRun; input: AdviceInput; advice: Advice }) {
  const others = () => props.advice.adjustments.slice(1);
  return (
    <div class="stack">
      <Show when={props.advice.referrals.length > 0}>
        <div class="card alarm">
          <h4>{pit.advice.referrals}</h4>
          <ul>
            <For each={props.advice.referrals}>
              {(referral) => (
                <li>
                  <strong>{causeLine(referral)}.</strong> {trade.referralReason(referral)}{" "}
                  {trade.referralAction(referral)}
                </li>
              )}
            </For>
          </ul>
        </div>
      </Show>
      <Show when={props.advice.questions.length > 0}>
        <div class="card pit-questions">
          <h4>{pit.advice.questions}</h4>
          <ul>
            <For each={props.advice.questions}>
              {({ end, rule }) => (
                <li>
                  <strong>{pit.feedback.ends[end]}:</strong> {trade.rule(rule)?.reason}
                </li>
              )}
            </For>
          </ul>
        </div>
      </Show>
      <Show
        when={props.advice.adjustments[0]}
        fallback={
          <Show
            when={props.advice.questions.length + props.advice.unanswered.length + props.advice.referrals.length === 0}
          >
            <p>{pit.advice.none}</p>
          </Show>
        }
      >
        {(first) => (
          <div class="stack pit-first">
            <h4>{pit.advice.first}</h4>
            <Problem sentence={waiting(first())} />
            <AdjustmentView bench={props.bench} logged={props.logged} input={props.input} adjustment={first()} />
          </div>
        )}
      </Show>
      <Show when={others().length > 0}>
        <h4>{pit.advice.others(others().length)}</h4>
        <p>{waiting(others()[0])}</p>
        <EachByKey each={others()} keyOf={({ rule, end }) => `${rule} ${end}`}>
          {(adjustment) => (
            <details class="card">
              <summary class="pit-summary">{settingLine(adjustment().setting)}</summary>
              <AdjustmentView bench={props.bench} logged={props.logged} input={props.input} adjustment={adjustment()} />
            </details>
          )}
        </EachByKey>
      </Show>
      <Show when={props.advice.unanswered.length > 0}>
        <h4>{pit.advice.unanswered}</h4>
        <ul>
          <For each={props.advice.unanswered}>
            {(unanswered) => (
              <li>
                <strong>{causeLine(unanswered)}.</strong> {unanswered.why.map(trade.hindrance).join(" ")}
              </li>
            )}
          </For>
        </ul>
      </Show>
      <WhyNot input={props.input} />
    </div>
  );
}

function waiting(adjustment: Adjustment | undefined): string | undefined {
  return adjustment?.waitsFor && trade.waitsFor(adjustment.waitsFor);
}
