import { For } from "solid-js";
import { courseProfile as words } from "#client/text/course-profile.ts";
import { drawing, type ProfileView } from "./profile-view.ts";

/** Height over distance, steep stretches as a thick line, the named sections as numbered bars below. */
export function ProfileChart(props: { view: ProfileView }) {
  return (
    <figure class="line-chart course-chart">
      <figcaption>
        {words.chart.title} ({words.chart.thick}; {words.chart.sections})
      </figcaption>
      <svg viewBox={`0 0 ${drawing.width} ${drawing.height}`} role="img" aria-label={props.view.described}>
        <For each={props.view.heights}>
          {({ at, label }) => (
            <>
              <line class="grid" x1={drawing.left} x2={drawing.right} y1={at} y2={at} />
              <text x={drawing.left - 6} y={at + 5} text-anchor="end">
                {label}
              </text>
            </>
          )}
        </For>
        <For each={props.view.distances}>
          {({ at, label }) => (
            <>
              <line class="grid" x1={at} x2={at} y1={drawing.top} y2={drawing.bottom} />
              <text x={at} y={drawing.bottom + 17} text-anchor="middle">
                {label}
              </text>
            </>
          )}
        </For>
        <text x={4} y={16}>
          {words.chart.height}
        </text>
        <text x={drawing.right} y={drawing.height - 4} text-anchor="end">
          {words.chart.along}
        </text>
        <polyline points={props.view.line} />
        <For each={props.view.steep}>{(points) => <polyline class="steep" points={points} />}</For>
        <For each={props.view.sections}>
          {({ from, to, y, label }) => (
            <>
              <line class="section" x1={from} x2={to} y1={y} y2={y} />
              <text class="mark" x={from - 4} y={y + 5} text-anchor="end">
                {label}
              </text>
            </>
          )}
        </For>
      </svg>
    </figure>
  );
}
