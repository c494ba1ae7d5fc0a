import { createSignal, type JSX, Show } from "solid-js";

/** Something folded away that is made when it is first opened, and then stays: what nobody looks at costs nothing. */
export function Fold(props: { summary: string; class?: string; children: JSX.Element }) {
  const [wasOpened, setOpened] = createSignal(false);
  return (
    <details class={props.class} onToggle={(event) => event.currentTarget.open && setOpened(true)}>
      <summary class="pit-summary">{props.summary}</summary>
      <Show when={wasOpened()}>{props.children}</Show>
    </details>
  );
}
