import { For, Show } from "solid-js";
import { print } from "#client/text/print.ts";
import { formatMoment } from "#client/widgets/format.ts";
import { WeekendChoice } from "#client/widgets/weekend-choice.tsx";
import type { ChosenPrint } from "./create-chosen-print.ts";

/** Which weekend, and which session of it. */
export function PrintPicker(props: { chosen: ChosenPrint; ofSession: boolean }) {
  return (
    <div class="print-picker">
      <WeekendChoice
        label={print.weekend}
        weekends={props.chosen.weekends()}
        value={props.chosen.programme()?.weekendId}
        onChange={props.chosen.chooseWeekend}
      />
      <Show when={props.ofSession}>
        <label class="select-field">
          <span>{print.session}</span>
          <select onChange={(event) => props.chosen.chooseSession(event.currentTarget.value)}>
            <For each={props.chosen.programme()?.sessions ?? []}>
              {({ id, session }) => (
                <option value={id} selected={id === props.chosen.session()?.id}>
                  {print.sessionAt(session.name, formatMoment(session.startsAt))}
                </option>
              )}
            </For>
          </select>
        </label>
      </Show>
    </div>
  );
}
