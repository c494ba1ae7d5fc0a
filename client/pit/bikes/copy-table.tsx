import { For } from "solid-js";
import { spareBike } from "#client/text/spare-bike.ts";
import type { CopyLine } from "./copy-rows.ts";

/** Value by value: what would be set, what is on the other bike now, and what becomes of it. */
export function CopyTable(props: { lines: readonly CopyLine[]; isAtTheBench: boolean }) {
  const words = spareBike.copy;
  return (
    <>
      <p>{props.isAtTheBench ? words.atTheBench : words.asTyped}</p>
      <div class="table-scroll">
        <table class="pit-copy">
          <thead>
            <tr>
              <th scope="col">{words.adjuster}</th>
              <th scope="col">{words.value}</th>
              <th scope="col">{words.now}</th>
              <th scope="col">{words.outcome}</th>
            </tr>
          </thead>
          <tbody>
            <For each={props.lines}>
              {(line) => (
                <tr>
                  <th scope="row">{line.adjuster}</th>
                  <td data-label={words.value}>{line.value}</td>
                  <td data-label={words.now}>{line.now}</td>
                  <td data-label={words.outcome}>
                    <p class={line.isRefused ? "problem" : ""}>{line.outcome}</p>
                    <For each={line.notes}>{(note) => <p>{note}</p>}</For>
                  </td>
                </tr>
              )}
            </For>
          </tbody>
        </table>
      </div>
    </>
  );
}
