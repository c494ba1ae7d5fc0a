import { Show } from "solid-js";
import { print } from "#client/text/print.ts";
import { formatMoment } from "#client/widgets/format.ts";
import { OptionSelect } from "#client/widgets/option-select.tsx";
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
        <OptionSelect
          label={print.session}
          options={(props.chosen.programme()?.sessions ?? []).map(({ id, session }) => ({
            id,
            label: print.sessionAt(session.name, formatMoment(session.startsAt)),
          }))}
          chosen={props.chosen.session()?.id}
          onChoose={props.chosen.chooseSession}
        />
      </Show>
    </div>
  );
}
