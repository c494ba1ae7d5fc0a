import { createMemo, For, Show } from "solid-js";
import { review } from "#client/text/review.ts";
import type { BaselineProposal } from "#core/planning/baseline-review.ts";
import { type DifferenceRow, proposalView } from "./proposal-view.ts";

/** Adjuster by adjuster: baseline, on the bike, and the difference in words. */
export function ProposalTable(props: { proposal: BaselineProposal; isDisputed: boolean }) {
  const view = createMemo(() => proposalView(props.proposal, props.isDisputed));
  return (
    <>
      <p>
        <strong>{view().summary}</strong>
      </p>
      <Show when={view().changed.length > 0}>
        <Rows rows={view().changed} caption={review.weekend.title} />
      </Show>
      <Show when={view().same.length > 0}>
        <details>
          <summary>{review.weekend.showSame(view().same.length)}</summary>
          <Rows rows={view().same} caption={review.weekend.showSame(view().same.length)} />
        </details>
      </Show>
      <For each={view().sag}>{(sentence) => <p>{sentence}</p>}</For>
    </>
  );
}

function Rows(props: { rows: readonly DifferenceRow[]; caption: string }) {
  return (
    <table class="differences">
      <caption class="visually-hidden">{props.caption}</caption>
      <thead>
        <tr>
          <th scope="col">{review.weekend.adjuster}</th>
          <th scope="col">{review.weekend.baseline}</th>
          <th scope="col">{review.weekend.onTheBike}</th>
          <th scope="col">{review.weekend.difference}</th>
        </tr>
      </thead>
      <tbody>
        <For each={props.rows}>
          {(row) => (
            <tr>
              <th scope="row">{row.label}</th>
              <td data-label={review.weekend.baseline}>{row.baseline}</td>
              <td data-label={review.weekend.onTheBike}>{row.onTheBike}</td>
              <td class="difference">{row.difference}</td>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
