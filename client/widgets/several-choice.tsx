import { For } from "solid-js";

export interface SeveralChoiceProps<Value extends string> {
  readonly legend: string;
  readonly options: readonly Value[];
  readonly labelOf: (value: Value) => string;
  readonly values: readonly Value[];
  readonly onChange: (values: readonly Value[]) => void;
}

/** Any number of a few options, all in view, each a large target. */
export function SeveralChoice<Value extends string>(props: SeveralChoiceProps<Value>) {
  const toggle = (option: Value, chosen: boolean): void => {
    props.onChange(props.options.filter((other) => (other === option ? chosen : props.values.includes(other))));
  };
  return (
    <fieldset>
      <legend>{props.legend}</legend>
      <div class="choices">
        <For each={props.options}>
          {(option) => (
            <label>
              <input
                type="checkbox"
                value={option}
                checked={props.values.includes(option)}
                onChange={(event) => toggle(option, event.currentTarget.checked)}
              />
              {props.labelOf(option)}
            </label>
          )}
        </For>
      </div>
    </fieldset>
  );
}
