import { createSignal, For, Show } from "solid-js";
import { data } from "#client/text/data.ts";

const LINES_AT_A_TIME = 40;

/** A titled list of which a part is in view until more is asked for; nothing while it is empty. */
export function LongList(props: { title: string; lines: readonly string[] }) {
  const [shown, setShown] = createSignal(LINES_AT_A_TIME);
  const next = () => Math.min(LINES_AT_A_TIME, Math.max(0, props.lines.length - shown()));
  return (
    <Show when={props.lines.length > 0}>
      <h4>{`${props.title} (${props.lines.length})`}</h4>
      <ul class="data-lines">
        <For each={props.lines.slice(0, shown())}>{(line) => <li>{line}</li>}</For>
      </ul>
      <Show when={next() > 0}>
        <button type="button" onClick={() => setShown((count) => count + LINES_AT_A_TIME)}>
          {data.preview.more(next())}
        </button>
      </Show>
    </Show>
  );
}
