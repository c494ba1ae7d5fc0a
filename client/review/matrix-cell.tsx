import { A } from "@solidjs/router";
import { For, Show } from "solid-js";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import type { CellView } from "./matrix-view.ts";

/** One rider's baseline for one course type: the values that count, how many versions, when and who. */
export function MatrixCell(props: { cell: CellView; riderId: string; rider: string }) {
  const type = () => common.courseTypes[props.cell.type];
  return (
    <A class="matrix-cell" href={`/review/rider/${props.riderId}?type=${props.cell.type}`}>
      <span class="visually-hidden">{review.matrix.open(props.rider, type())}. </span>
      <span class="cell-type" aria-hidden="true">
        {type()}
      </span>
      <Show when={props.cell.notice}>{(notice) => <strong>{notice()}</strong>}</Show>
      <For each={props.cell.values}>
        {(value) => (
          <span class="key-value">
            <span>{value.name}</span>
            <span class="key-number">{value.text}</span>
          </span>
        )}
      </For>
      <Show when={props.cell.facts}>{(facts) => <span class="small">{facts()}</span>}</Show>
      <For each={props.cell.outliers}>{(sentence) => <strong class="small outlier">{sentence}</strong>}</For>
      <Show when={props.cell.versions}>
        {(versions) => (
          <span class="small cell-versions">
            <span>{versions()}</span>
            <span>{props.cell.latest}</span>
          </span>
        )}
      </Show>
    </A>
  );
}
