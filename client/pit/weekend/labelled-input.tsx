import { createEffect, createUniqueId, Show } from "solid-js";

/** A native field with its label in view. */
export function LabelledInput(props: {
  label: string;
  /** For assistive technology, where the label in view tells too little alone. */
  fullLabel?: string;
  type: "text" | "date" | "time";
  value: string;
  hint?: string;
  onInput: (value: string) => void;
}) {
  const id = createUniqueId();
  const hint = createUniqueId();
  let input: HTMLInputElement | undefined;
  createEffect(() => {
    // A date that is half typed reads as empty; writing that back would take away what is typed.
    if (input && input.value !== props.value) input.value = props.value;
  });
  return (
    <div>
      <label class="field" for={id}>
        {props.label}
      </label>
      <input
        ref={input}
        id={id}
        type={props.type}
        aria-label={props.fullLabel}
        aria-describedby={props.hint === undefined ? undefined : hint}
        autocomplete="off"
        onInput={(event) => props.onInput(event.currentTarget.value)}
      />
      <Show when={props.hint}>
        {(text) => (
          <p id={hint} class="small pit-hint">
            {text()}
          </p>
        )}
      </Show>
    </div>
  );
}
