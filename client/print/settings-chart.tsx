import { createMemo, For, Show } from "solid-js";
import { weekendReport } from "#client/text/weekend-report.ts";
import type { SettingSeries } from "#core/planning/setting-series.ts";
import { chart } from "./run-axis.ts";
import { settingsChartView } from "./settings-chart-view.ts";

/** Each adjuster that was changed as a line over the runs; its sentences stand below it. */
export function SettingsChart(props: { settings: readonly SettingSeries[] }) {
  const view = createMemo(() => settingsChartView(props.settings));
  return (
    <Show when={view()}>
      {(shown) => (
        <figure class="report-chart">
          <figcaption>{weekendReport.settings.title}</figcaption>
          <svg viewBox={`0 0 ${chart.width} ${shown().height}`} role="img" aria-label={shown().described.join(" ")}>
            <For each={shown().strips}>
              {(strip) => (
                <>
                  <text x={0} y={strip.middle}>
                    {strip.name}
                  </text>
                  <path d={strip.path} />
                  <For each={strip.labels}>
                    {({ x, y, text }) => (
                      <text x={x} y={y}>
                        {text}
                      </text>
                    )}
                  </For>
                </>
              )}
            </For>
          </svg>
          <ul>
            <For each={shown().described}>{(sentence) => <li>{sentence}</li>}</For>
          </ul>
        </figure>
      )}
    </Show>
  );
}
