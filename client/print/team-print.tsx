import { For, Show } from "solid-js";
import { print } from "#client/text/print.ts";
import { PencilBox } from "./pencil-box.tsx";
import type { PrintedEnd } from "./team-print-view.ts";

/** The tables of the session sheet, one for each end of the bikes. */
export function TeamPrint(props: { tables: readonly PrintedEnd[] }) {
  return (
    <For each={props.tables}>
      {(table) => (
        <table class="print-team">
          <thead>
            <tr>
              {/* Not a caption, which is not repeated on the next page. */}
              <th scope="colgroup" colspan={table.columns.length + 1}>
                {table.title}
              </th>
            </tr>
            <tr>
              <th scope="col">{print.columns.rider}</th>
              <For each={table.columns}>{(column) => <th scope="col">{column}</th>}</For>
            </tr>
          </thead>
          <tbody>
            <For each={table.riders}>
              {(rider) => (
                <tr>
                  <th scope="row">
                    {rider.name} <span class="print-aside">{rider.plate}</span>
                  </th>
                  <Show
                    when={rider.problem === undefined}
                    fallback={<td colspan={table.columns.length}>{rider.problem}</td>}
                  >
                    <For each={rider.cells}>
                      {(cell) => (
                        <td>
                          <Show when={cell} fallback={print.none}>
                            {(shown) => (
                              <>
                                <div class="print-cell">
                                  <strong>{shown().target}</strong>
                                  <PencilBox />
                                </div>
                                <small>
                                  {shown().now} <em>{shown().standing}</em>
                                </small>
                              </>
                            )}
                          </Show>
                        </td>
                      )}
                    </For>
                  </Show>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      )}
    </For>
  );
}
