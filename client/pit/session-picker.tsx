import { createUniqueId, For } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { formatMoment } from "#client/widgets/format.ts";
import type { ChosenSession } from "./chosen-session.ts";

/** Which weekend and which session to work for. */
export function SessionPicker(props: { chosen: ChosenSession }) {
  const weekendField = createUniqueId();
  const sessionField = createUniqueId();
  return (
    <div class="pit-picker">
      <div>
        <label class="field" for={weekendField}>
          {pit.weekend}
        </label>
        <select id={weekendField} onChange={(event) => props.chosen.chooseWeekend(event.currentTarget.value)}>
          <For each={props.chosen.weekends()}>
            {({ id, weekend }) => (
              <option value={id} selected={id === props.chosen.programme()?.weekendId}>
                {weekend.name}
              </option>
            )}
          </For>
        </select>
      </div>
      <div>
        <label class="field" for={sessionField}>
          {pit.session}
        </label>
        <select id={sessionField} onChange={(event) => props.chosen.chooseSession(event.currentTarget.value)}>
          <For each={props.chosen.programme()?.sessions ?? []}>
            {({ id, session }) => (
              <option value={id} selected={id === props.chosen.session()?.id}>
                {pit.sessionAt(session.name, formatMoment(session.startsAt))}
              </option>
            )}
          </For>
        </select>
      </div>
    </div>
  );
}
