import { For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatDifference } from "#client/widgets/format.ts";
import type { Reason } from "#core/advice/reason.ts";

/** Why a value is what it is, line by line, each with where the knowledge comes from. */
export function ReasonList(props: { reasons: readonly Reason[] }) {
  return (
    <ol class="pit-reasons">
      <For each={props.reasons}>
        {(reason) => (
          <li>
            <Show when={reason.change}>{(change) => <strong>{formatDifference(change())}: </strong>}</Show>
            {trade.reason(reason.because)} <span class="tag">{pit.sheet.provenance[reason.provenance]}</span>
            <Show when={reason.refused}>
              {(refused) => <p class="pit-refused">{pit.sheet.refused(trade.limit(refused()))}</p>}
            </Show>
          </li>
        )}
      </For>
    </ol>
  );
}
