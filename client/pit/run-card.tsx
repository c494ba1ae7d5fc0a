import { createMemo, createSignal, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { decisionEntry } from "#core/planning/entries.ts";
import { mountedAdjusters } from "#core/team/roster.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { ByHandModal } from "./by-hand-modal.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { runName } from "./names.ts";
import { RunAdvice } from "./run-advice.tsx";
import { runAnswerText } from "./run-answer.ts";
import { RunReport } from "./run-report.tsx";

/** One run: what the rider said, and the advice on it or how it was answered. */
export function RunCard(props: { bench: RiderBench; logged: LoggedRun }) {
  const [byHand, setByHand] = createSignal(false);
  const ledger = () => props.bench.device.ledger();
  const answer = createMemo(() => runAnswerText(ledger(), props.logged));
  const firstPath = () => mountedAdjusters(props.bench.mounted()?.parts ?? {})[0]?.path;
  const leave = (): void => {
    const entries = [decisionEntry(props.logged, "left as it is")];
    props.bench.acts.write({ ok: true, entries }, pit.feedback.leftDone);
  };
  return (
    <article class="card stack">
      <div class="pit-row-head">
        <h3>{runName(ledger(), props.logged)}</h3>
        <span class={props.logged.decision ? "tag" : "tag strong"}>{answer().tag}</span>
      </div>
      <Show
        when={!props.logged.decision}
        fallback={
          <>
            <ul class="plain">
              <For each={answer().changes}>{(change) => <li>{change}</li>}</For>
            </ul>
            <details>
              <summary class="pit-summary">{pit.feedback.show}</summary>
              <RunReport run={props.logged.run} />
            </details>
          </>
        }
      >
        <RunReport run={props.logged.run} />
        <RunAdvice bench={props.bench} logged={props.logged} />
        <div class="pit-actions">
          <button type="button" onClick={leave}>
            {pit.feedback.leave}
          </button>
          <button type="button" onClick={() => setByHand(true)}>
            {pit.feedback.byHand}
          </button>
        </div>
      </Show>
      <Show when={byHand() && firstPath()}>
        {(path) => (
          <ByHandModal bench={props.bench} path={path()} run={props.logged} onClose={() => setByHand(false)} />
        )}
      </Show>
    </article>
  );
}
