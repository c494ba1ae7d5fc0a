import { For } from "solid-js";

/** The head of a printed page: what it is about in large, then line by line on what occasion. */
export function PageHead(props: { title: string; aside: string; lines: readonly string[] }) {
  return (
    <header class="print-head">
      <h2>
        {props.title} <span class="print-aside">{props.aside}</span>
      </h2>
      <For each={props.lines}>{(line) => <p>{line}</p>}</For>
    </header>
  );
}
