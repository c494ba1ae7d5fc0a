import { A } from "@solidjs/router";
import { createMemo, For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { baselineReview } from "#client/text/baseline-review.ts";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { formatQuantity } from "#client/widgets/format.ts";
import { today } from "#client/widgets/today.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { MatrixCell } from "./matrix-cell.tsx";
import { matrixView } from "./matrix-view.ts";
import { ReviewNav } from "./review-nav.tsx";

/** Riders by course types: a table where there is room, cards on a phone. */
export function MatrixScreen() {
  const device = useDevice();
  const rows = createMemo(() => matrixView(device.ledger(), today()));
  return (
    <>
      <ReviewNav />
      <h1>{review.matrix.title}</h1>
      <Show when={device.loaded()} fallback={<p>{common.loading}</p>}>
        <Show when={rows().length > 0} fallback={<p>{review.matrix.none}</p>}>
          <p>{review.keyValues.legend}</p>
          <details class="matrix-explained">
            <summary>{baselineReview.how}</summary>
            <p>{baselineReview.explained}</p>
          </details>
          <table class="matrix">
            <thead>
              <tr>
                <th scope="col">{review.matrix.rider}</th>
                <For each={courseTypes}>{(type) => <th scope="col">{common.courseTypes[type]}</th>}</For>
              </tr>
            </thead>
            <tbody>
              <EachByKey each={rows()} keyOf={({ mounted }) => mounted.riderId}>
                {(row) => (
                  <tr>
                    <th scope="row">
                      <A class="rider-link" href={`/review/rider/${row().mounted.riderId}`}>
                        {row().mounted.rider.name}
                      </A>
                      <div class="small plain-weight">
                        <Show when={row().mounted.rider.plate}>
                          {(plate) => <span>{review.matrix.plate(plate())}, </span>}
                        </Show>
                        {formatQuantity(row().mounted.rider.mass)}
                      </div>
                    </th>
                    <EachByKey each={row().cells} keyOf={({ type }) => type}>
                      {(cell) => (
                        <td>
                          <MatrixCell cell={cell()} riderId={row().mounted.riderId} rider={row().mounted.rider.name} />
                        </td>
                      )}
                    </EachByKey>
                  </tr>
                )}
              </EachByKey>
            </tbody>
          </table>
        </Show>
      </Show>
    </>
  );
}
