import { Show } from "solid-js";

/** A sentence about something that could not be done; nothing while there is none. */
export function Problem(props: { sentence: string | undefined }) {
  return (
    <Show when={props.sentence}>
      {(sentence) => (
        <p class="problem" role="alert">
          {sentence()}
        </p>
      )}
    </Show>
  );
}
