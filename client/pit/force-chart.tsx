import { createMemo, For, Show } from "solid-js";
import { forceChart as words } from "#client/text/force-chart.ts";
import type { Adjustment, AdviceInput } from "#core/advice/adjustment.ts";
import { forceCurves } from "#core/advice/force-curves.ts";
import { drawing, forceChartView } from "./force-chart-view.ts";

/** More points than a phone has pixels would only cost time. */
const POINTS = 120;

/** The spring's force before (dashed) and after (solid) an adjustment, with sag and travel marked; nothing where it changes no spring. */
export function ForceChart(props: { input: AdviceInput; adjustment: Adjustment }) {
  const view = createMemo(() => {
    const curves = forceCurves(props.input, props.adjustment, POINTS);
    return curves && forceChartView(curves, props.adjustment.before, props.adjustment.after);
  });
  return (
    <Show when={view()}>
      {(shown) => (
        <figure class="line-chart force-chart">
          <figcaption>
            {words.title}: <span class="force-chart-before">{words.now}</span>,{" "}
            <span class="force-chart-after">{words.afterwards}</span>
          </figcaption>
          <svg viewBox={`0 0 ${drawing.width} ${drawing.height}`} role="img" aria-label={shown().described}>
            <For each={shown().forces}>
              {({ at, label }) => (
                <>
                  <line class="grid" x1={drawing.left} x2={drawing.right} y1={at} y2={at} />
                  <text x={drawing.left - 8} y={at + 5} text-anchor="end">
                    {label}
                  </text>
                </>
              )}
            </For>
            <For each={shown().strokes}>
              {({ at, label }) => (
                <>
                  <line class="grid" x1={at} x2={at} y1={drawing.top} y2={drawing.bottom} />
                  <text x={at} y={drawing.bottom + 18} text-anchor="middle">
                    {label}
                  </text>
                </>
              )}
            </For>
            <text x={4} y={16}>
              {words.force}
            </text>
            <text x={drawing.right} y={drawing.height - 6} text-anchor="end">
              {words.stroke}
            </text>
            <polyline class="before" points={shown().before} />
            <polyline class="after" points={shown().after} />
            <For each={shown().marksBefore}>{({ x, y }) => <circle class="before" cx={x} cy={y} r={6} />}</For>
            <For each={shown().marksAfter}>
              {({ x, y, label }) => (
                <>
                  <circle class="after" cx={x} cy={y} r={6} />
                  {/* Under the curve, which rises, there is room. */}
                  <text class="mark" x={Math.min(x + 10, drawing.right)} y={y + 22} text-anchor={anchorAt(x)}>
                    {label}
                  </text>
                </>
              )}
            </For>
          </svg>
          <p>{shown().difference}</p>
        </figure>
      )}
    </Show>
  );
}

/** Where there is no room to the right of a mark, its words end under it. */
function anchorAt(x: number): "start" | "end" {
  return x > drawing.right - 100 ? "end" : "start";
}
