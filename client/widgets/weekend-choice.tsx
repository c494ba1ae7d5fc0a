import { For, Show } from "solid-js";
import type { weekends } from "#core/weekend/programme.ts";

export interface WeekendChoiceProps {
  readonly label: string;
  readonly weekends: ReturnType<typeof weekends>;
  readonly value: string | undefined;
  readonly onChange: (weekendId: string) => void;
}

/** Which weekend; nothing while there is only one. */
export function WeekendChoice(props: WeekendChoiceProps) {
  return (
    <Show when={props.weekends.length > 1}>
      <label class="select-field">
        <span>{props.label}</span>
        <select onChange={(event) => props.onChange(event.currentTarget.value)}>
          <For each={props.weekends}>
            {({ id, weekend }) => (
              <option value={id} selected={id === props.value}>
                {weekend.name}
              </option>
            )}
          </For>
        </select>
      </label>
    </Show>
  );
}
