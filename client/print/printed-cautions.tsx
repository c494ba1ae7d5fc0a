import { For } from "solid-js";
import { print } from "#client/text/print.ts";

/** What can hurt somebody at the bench; on every page that says what to set. */
export function PrintedCautions(props: { more: readonly string[] }) {
  return (
    <section class="print-cautions">
      <h3>{print.bench.cautionsTitle}</h3>
      <ul>
        <For each={[...print.bench.cautions, ...props.more]}>{(sentence) => <li>{sentence}</li>}</For>
      </ul>
    </section>
  );
}
