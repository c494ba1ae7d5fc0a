import { createUniqueId, For } from "solid-js";

export interface ChoiceProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly Value[];
  readonly labelOf: (value: Value) => string;
  readonly value: Value | undefined;
  /** Choosing the chosen one again takes it back. */
  readonly onChange: (value: Value | undefined) => void;
  readonly hideLegend?: boolean;
  /** One of them has to be chosen: choosing again does not take back. */
  readonly required?: boolean;
}

/** One of a few options, all in view, each a large target. */
export function Choice<Value extends string>(props: ChoiceProps<Value>) {
  const name = createUniqueId();
  return (
    <fieldset>
      <legend class={props.hideLegend ? "visually-hidden" : ""}>{props.legend}</legend>
      <div class="choices">
        <For each={props.options}>
          {(option) => (
            <label>
              <input
                type="radio"
                name={name}
                value={option}
                checked={props.value === option}
                onClick={() => {
                  if (props.value === option && !props.required) props.onChange(undefined);
                }}
                onChange={() => props.onChange(option)}
              />
              {props.labelOf(option)}
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}
