import { Show } from "solid-js";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import type { SetupSheet, SheetRow } from "#core/planning/setup-sheet.ts";
import { type GoBackTo, goBackEntries, goBackPlan, goBackValue } from "./bench-entries.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { valueText } from "./names.ts";

/** Going back with one adjuster, or setting it to something else. */
export function RowActions(props: { bench: RiderBench; sheet: SetupSheet; row: SheetRow; onSetByHand: () => void }) {
  const value = (to: GoBackTo) => {
    const onTheBike = props.bench.occasion()?.onTheBike ?? {};
    const { steps, blocked } = goBackPlan(props.sheet, onTheBike, to, props.row.path);
    return steps.length + blocked.length > 0 ? goBackValue(props.sheet, props.row, to) : undefined;
  };
  const goBack = (to: GoBackTo): void => {
    const occasion = props.bench.occasion();
    if (!occasion) return;
    const done = pit.goBack.adjuster(trade.adjuster(props.row.path), valueText(value(to)));
    props.bench.acts.write(goBackEntries(props.sheet, occasion, to, props.row.path), done);
  };
  return (
    <div class="pit-actions">
      <button type="button" onClick={() => props.onSetByHand()}>
        {pit.sheet.setByHand}
      </button>
      <Show when={props.row.state !== "to set" && value("weekend")}>
        {(to) => (
          <button type="button" onClick={() => goBack("weekend")}>
            {pit.sheet.backToWeekend(valueText(to()))}
          </button>
        )}
      </Show>
      <Show when={value("baseline")}>
        {(to) => (
          <button type="button" onClick={() => goBack("baseline")}>
            {pit.sheet.backToBaseline(valueText(to()))}
          </button>
        )}
      </Show>
    </div>
  );
}
