import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { trackside } from "#client/text/trackside.ts";
import { trade } from "#client/text/trade.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { answerToRun } from "#core/planning/run-answer.ts";
import type { Programme } from "#core/weekend/programme.ts";
import type { LoggedRun } from "#core/weekend/runs.ts";
import { describeRun } from "./describe-run.ts";

/** One run: what the mechanic decided on it first, then what the rider said. */
export function RunCard(props: { logged: LoggedRun; plan: Programme | undefined }) {
  const device = useDevice();
  const answer = createMemo(() => answerToRun(device.ledger(), props.logged));
  const notices = () => answer().rules.flatMap((rule) => trade.rule(rule)?.notice ?? []);
  const session = () => props.plan?.sessions.find(({ id }) => id === props.logged.run.session)?.session.name;
  return (
    <article class="card stack run-card">
      <h3>
        {session() ?? props.logged.run.session}, {formatMoment(props.logged.at)}
      </h3>
      <p class="answer">{trackside.answer.outcome[answer().outcome]}</p>
      <For each={answer().changes}>
        {(change) => (
          <div>
            <div>{adjusterLabel(change.path)}</div>
            <div class="value">
              {change.from.map(formatQuantity).join(" / ") || trackside.answer.noBefore} → {formatQuantity(change.to)}
            </div>
            <p>{trade.cause(change)}</p>
            <Show when={!change.current}>
              <p class="small">{trackside.answer.changedSince}</p>
            </Show>
          </div>
        )}
      </For>
      <Show when={notices().length > 0}>
        <div>
          <h4>{trackside.answer.notice}</h4>
          <For each={notices()}>{(notice) => <p>{notice}</p>}</For>
        </div>
      </Show>
      <Show when={answer().note}>{(note) => <p>{note()}</p>}</Show>
      <div class="said">
        <For each={describeRun(props.logged.run)} fallback={<p>{trackside.said.nothing}</p>}>
          {(line) => <p>{line}</p>}
        </For>
        <Show when={props.logged.run.note}>{(note) => <p>“{note()}”</p>}</Show>
      </div>
    </article>
  );
}
