import { createMemo, For, Show } from "solid-js";
import { print } from "#client/text/print.ts";
import type { BenchSequence } from "#core/advice/bench-sequence.ts";
import type { RiderBike } from "#core/team/roster.ts";
import { benchPrintView } from "./bench-print-view.ts";
import { PencilBox } from "./pencil-box.tsx";
import { PrintedCautions } from "./printed-cautions.tsx";

const { bench, columns } = print;

/** What to do at the bench in the safe order, below what can hurt there. */
export function BenchPrint(props: { mounted: RiderBike; sequence: BenchSequence; occasion: string }) {
  const view = createMemo(() => benchPrintView(props.mounted, props.sequence));
  return (
    <section class="print-bench">
      <PrintedCautions more={view().cautions} />
      <h3>{bench.title}</h3>
      <Show when={view().blocked.length > 0}>
        <div class="print-cautions">
          <p>
            <strong>{bench.blocked}</strong>
          </p>
          <For each={view().blocked}>{(sentence) => <p>{sentence}</p>}</For>
        </div>
      </Show>
      <Show when={view().steps.length > 0} fallback={<p>{bench.nothing}</p>}>
        <p>{bench.order}</p>
        <table class="print-steps">
          <thead>
            <tr>
              {/* The head is repeated on the next page, which is then known by itself. */}
              <th scope="colgroup" colspan="8">
                {props.occasion}
              </th>
            </tr>
            <tr>
              <th scope="col">{columns.step}</th>
              <th scope="col">{columns.adjuster}</th>
              <th scope="col">{columns.from}</th>
              <th scope="col">{columns.first}</th>
              <th scope="col">{columns.to}</th>
              <th scope="col">{columns.again}</th>
              <th scope="col">{columns.most}</th>
              <th scope="col">{columns.read}</th>
            </tr>
          </thead>
          <tbody>
            <For each={view().steps}>
              {(step) => (
                <tr>
                  <td>{step.number}</td>
                  <th scope="row">{step.name}</th>
                  <td>{step.from}</td>
                  <td>{step.first}</td>
                  <td class="print-target">{step.to}</td>
                  <td>{step.again}</td>
                  <td>{step.most}</td>
                  <td>
                    <PencilBox />
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </Show>
    </section>
  );
}
