import { For, Show } from "solid-js";
import { moments } from "#client/text/moments.ts";
import { AdjusterChoice } from "#client/widgets/adjuster-choice.tsx";
import type { Ledger } from "#core/ledger/ledger.ts";
import { knownValue } from "#core/team/roster.ts";
import { weekendKind } from "#core/weekend/record-kinds.ts";
import type { ChangeFilter } from "./create-change-filter.ts";

/** The filters of a rider's changelog; a weekend is to choose where there are several. */
export function ChangeFilters(props: { filter: ChangeFilter; ledger: Ledger; onChange: () => void }) {
  return (
    <div class="pit-go-back">
      <AdjusterChoice
        paths={props.filter.paths()}
        value={props.filter.path()}
        onChange={(path) => {
          props.filter.choosePath(path);
          props.onChange();
        }}
      />
      <Show when={props.filter.weekends().length > 1}>
        <label class="select-field">
          <span>{moments.weekend}</span>
          <select
            onChange={(event) => {
              props.filter.chooseWeekend(event.currentTarget.value || undefined);
              props.onChange();
            }}
          >
            <option value="">{moments.everyWeekend}</option>
            <For each={props.filter.weekends()}>
              {(id) => (
                <option value={id} selected={id === props.filter.weekend()}>
                  {knownValue(props.ledger, weekendKind, id)?.name ?? id}
                </option>
              )}
            </For>
          </select>
        </label>
      </Show>
    </div>
  );
}
