import { createMemo, For, Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { TableScroll } from "#client/widgets/table-scroll.tsx";
import type { Adjustment } from "#core/advice/adjustment.ts";
import { predictionRows } from "./prediction-rows.ts";

/** What physics predicts for an adjustment; nothing where it has no spring to go by. */
export function PredictionTable(props: { adjustment: Adjustment }) {
  const rows = createMemo(() => predictionRows(props.adjustment.before, props.adjustment.after));
  return (
    <Show when={rows().length > 0}>
      <TableScroll label={pit.advice.prediction}>
        <table class="pit-prediction">
          <caption>{pit.advice.prediction}</caption>
          <thead>
            <tr>
              <td />
              <th scope="col" class="number">
                {pit.advice.now}
              </th>
              <th scope="col" class="number">
                {pit.advice.afterwards}
              </th>
            </tr>
          </thead>
          <tbody>
            <For each={rows()}>
              {(row) => (
                <tr>
                  <th scope="row">{row.name}</th>
                  <td class="number">{row.before}</td>
                  <td class="number">
                    <strong>{row.after}</strong>
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </TableScroll>
    </Show>
  );
}
