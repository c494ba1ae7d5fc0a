import { createMemo, Show } from "solid-js";
import { weekendReport as words } from "#client/text/weekend-report.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { RiderReport } from "#core/planning/weekend-report.ts";
import type { Programme } from "#core/weekend/programme.ts";
import { CellTable } from "./cell-table.tsx";
import { ReportChanges } from "./report-changes.tsx";
import { endView, runRow } from "./report-view.ts";
import { SettingsChart } from "./settings-chart.tsx";
import { TimesChart } from "./times-chart.tsx";

const { end, runs } = words;

/** One rider's weekend. */
export function RiderReportPrint(props: { programme: Programme; rider: RiderReport }) {
  const ended = createMemo(() => endView(props.rider));
  const hasRuns = () => props.rider.runs.length > 0;
  const hasAny = () => hasRuns() || props.rider.changes.length > 0;
  const mounted = () => props.rider.mounted;
  return (
    <section class="report-rider">
      <h2>
        {words.rider(mounted().rider.name, mounted().rider.plate)}{" "}
        <span class="print-aside">{words.bike(mounted().bike.name, formatQuantity(mounted().rider.mass))}</span>
      </h2>
      <Show when={hasAny()} fallback={<p>{words.nothing}</p>}>
        <h3>{runs.title}</h3>
        <Show when={hasRuns()} fallback={<p>{runs.none}</p>}>
          <CellTable
            class="report-runs"
            columns={[runs.run, runs.session, runs.time, runs.front, runs.rear, runs.confidence, runs.note]}
            rows={props.rider.runs.map((run) => runRow(props.programme, run))}
          />
        </Show>
        <TimesChart programme={props.programme} runs={props.rider.runs} />
        <ReportChanges changes={props.rider.changes} />
        <SettingsChart settings={props.rider.settings} />
        <h3>{end.title}</h3>
        <p>
          {ended().sentence} {ended().same}
        </p>
        <Show when={ended().rows.length > 0}>
          <CellTable
            class="report-end"
            columns={[end.adjuster, end.baseline, end.ended, end.difference]}
            rows={ended().rows}
          />
        </Show>
      </Show>
    </section>
  );
}
