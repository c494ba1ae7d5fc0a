import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { confirmationEntry } from "#core/planning/entries.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { valueText } from "./names.ts";

/** A change that the rider reported from the hill, until a mechanic has seen it. */
export function ReportedCard(props: {
  bench: RiderBench;
  path: AdjusterPath;
  onSetByHand: (path: AdjusterPath) => void;
}) {
  const current = () => props.bench.settings().get(props.path) ?? { state: "absent" as const };
  const value = () => {
    const now = current();
    return valueText(now.state === "settled" ? now.value.quantity : undefined);
  };
  const confirm = (): void => {
    const mounted = props.bench.mounted();
    if (!mounted) return;
    const done = pit.reported.confirmed(trade.adjuster(props.path), value());
    props.bench.acts.write(confirmationEntry(mounted, props.path, current()), done);
  };
  return (
    <section class="card stack pit-reported">
      <h2>
        {pit.reported.title}: {trade.adjuster(props.path)} {value()}
      </h2>
      <p>{pit.reported.hint}</p>
      <div class="row">
        <button type="button" class="main" onClick={confirm}>
          {pit.reported.confirm(value())}
        </button>
        <button type="button" onClick={() => props.onSetByHand(props.path)}>
          {pit.reported.other}
        </button>
      </div>
    </section>
  );
}
