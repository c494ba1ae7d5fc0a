import { For, Show } from "solid-js";

export interface SelectOption {
  readonly id: string;
  readonly label: string;
}

/** One of a list that is too long for buttons; with `placeholder` nothing needs to be chosen yet. */
export function OptionSelect(props: {
  label: string;
  options: readonly SelectOption[];
  chosen: string | undefined;
  placeholder?: string;
  onChoose: (id: string) => void;
}) {
  return (
    <label class="select-field">
      <span>{props.label}</span>
      <select onChange={(event) => props.onChoose(event.currentTarget.value)}>
        <Show when={props.placeholder}>
          {(text) => (
            <option value="" selected={props.chosen === undefined}>
              {text()}
            </option>
          )}
        </Show>
        <For each={props.options}>
          {({ id, label }) => (
            <option value={id} selected={id === props.chosen}>
              {label}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
