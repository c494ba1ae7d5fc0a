import { For } from "solid-js";
import { pit } from "#client/text/pit.ts";

/** What can hurt somebody at the bench; always in view where there is something to set. */
export function WorkCautions() {
  return (
    <div class="caution" role="note">
      <strong>{pit.bench.cautionsTitle}</strong>
      <ul>
        <For each={pit.bench.cautions}>{(sentence) => <li>{sentence}</li>}</For>
      </ul>
    </div>
  );
}
