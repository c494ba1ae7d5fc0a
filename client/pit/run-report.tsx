import { createMemo, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { sections } from "#client/text/sections.ts";
import { sectionName } from "#client/widgets/section-name.ts";
import type { Run } from "#core/weekend/run.ts";
import { lapTime, runReport } from "./report-lines.ts";

/** What the rider measured and said on a run, front beside rear. */
export function RunReport(props: { run: Run }) {
  const report = createMemo(() => runReport(props.run));
  return (
    <div class="stack">
      <Show when={props.run.section}>
        {(section) => (
          <p>
            <strong>{sections.at(sectionName(section()))}</strong>
          </p>
        )}
      </Show>
      <div class="pit-report">
        <For each={report()}>
          {({ end, lines }) => (
            <div>
              <h4>{pit.feedback.ends[end]}</h4>
              <Show when={lines.length > 0} fallback={<p>{pit.feedback.nothing}</p>}>
                <dl class="pit-lines">
                  <For each={lines}>
                    {(line) => (
                      <div>
                        <dt>{line.name}</dt>
                        <dd>{line.text}</dd>
                      </div>
                    )}
                  </For>
                </dl>
              </Show>
            </div>
          )}
        </For>
      </div>
      <Show when={props.run.timeSeconds !== undefined || props.run.confidence !== undefined}>
        <p class="row">
          <Show when={props.run.timeSeconds}>
            {(seconds) => <strong>{pit.feedback.lap(lapTime(seconds()))}</strong>}
          </Show>
          <Show when={props.run.confidence}>
            {(confidence) => <strong>{pit.feedback.confidence[confidence()]}</strong>}
          </Show>
        </p>
      </Show>
      <Show when={props.run.note}>
        {(note) => (
          <p>
            {pit.feedback.note}: {note()}
          </p>
        )}
      </Show>
    </div>
  );
}
