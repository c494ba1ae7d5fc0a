import { createMemo, For, Show } from "solid-js";
import { weekendReport } from "#client/text/weekend-report.ts";
import type { ReportedRun } from "#core/planning/weekend-report.ts";
import type { Programme } from "#core/weekend/programme.ts";
import { chart } from "./run-axis.ts";
import { timesChart, timesChartView } from "./times-chart-view.ts";

/** Run times, with the runs marked that were the first with a change on the bike; its sentences stand below it. */
export function TimesChart(props: { programme: Programme; runs: readonly ReportedRun[] }) {
  const view = createMemo(() => timesChartView(props.programme, props.runs));
  return (
    <Show when={view()}>
      {(shown) => (
        <figure class="report-chart">
          <figcaption>{weekendReport.times.title}</figcaption>
          <svg viewBox={`0 0 ${chart.width} ${timesChart.height}`} role="img" aria-label={shown().described}>
            <line x1={chart.left} x2={chart.right} y1={timesChart.bottom + 8} y2={timesChart.bottom + 8} />
            <For each={shown().sessions}>
              {({ x, name, line }) => (
                <>
                  <Show when={line !== undefined}>
                    <line class="between" x1={line} x2={line} y1={4} y2={timesChart.height} />
                  </Show>
                  <text x={x} y={timesChart.height - 4}>
                    {name}
                  </text>
                </>
              )}
            </For>
            <polyline points={shown().line} />
            <For each={shown().points}>
              {({ x, y, label, run, changed }) => (
                <>
                  <circle classList={{ changed }} cx={x} cy={y} r={4} />
                  <text x={x} y={y - 9} text-anchor="middle">
                    {label}
                  </text>
                  <text x={x} y={timesChart.bottom + 21} text-anchor="middle">
                    {run}
                  </text>
                </>
              )}
            </For>
          </svg>
          <p>{shown().described}</p>
        </figure>
      )}
    </Show>
  );
}
