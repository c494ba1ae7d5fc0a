import { For } from "solid-js";
import { moments } from "#client/text/moments.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { adjusterLabel } from "./adjuster-label.ts";

export interface AdjusterChoiceProps {
  readonly paths: readonly AdjusterPath[];
  /** Absent: all of them. One that is not among `paths` is offered too, so that what is chosen is always in view. */
  readonly value: AdjusterPath | undefined;
  readonly onChange: (path: AdjusterPath | undefined) => void;
}

/** Which adjuster a list is about, or all. */
export function AdjusterChoice(props: AdjusterChoiceProps) {
  const paths = () => {
    const { paths: offered, value } = props;
    return value === undefined || offered.includes(value) ? offered : [...offered, value];
  };
  return (
    <label class="select-field">
      <span>{moments.adjuster}</span>
      <select
        onChange={(event) => props.onChange(paths().find((path) => path === event.currentTarget.value))}
        value={props.value ?? ""}
      >
        <option value="">{moments.everyAdjuster}</option>
        <For each={paths()}>
          {(path) => (
            <option value={path} selected={path === props.value}>
              {adjusterLabel(path)}
            </option>
          )}
        </For>
      </select>
    </label>
  );
}
