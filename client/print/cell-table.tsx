import { For } from "solid-js";

/** A table of plain texts; the first cell of a row names it. */
export function CellTable(props: { class: string; columns: readonly string[]; rows: readonly (readonly string[])[] }) {
  return (
    <table class={props.class}>
      <thead>
        <tr>
          <For each={props.columns}>{(column) => <th scope="col">{column}</th>}</For>
        </tr>
      </thead>
      <tbody>
        <For each={props.rows}>
          {(row) => (
            <tr>
              <th scope="row">{row[0]}</th>
              <For each={row.slice(1)}>{(cell) => <td>{cell}</td>}</For>
            </tr>
          )}
        </For>
      </tbody>
    </table>
  );
}
