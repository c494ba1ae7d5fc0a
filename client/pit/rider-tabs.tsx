import { For } from "solid-js";
import { pit } from "#client/text/pit.ts";
import type { RiderBench } from "./create-rider-bench.ts";

export const riderTabs = ["bench", "feedback", "changelog"] as const;
export type RiderTab = (typeof riderTabs)[number];

/** The part of the page that an address asks for; the bench when it asks for none. */
export function tabOf(view: string | undefined): RiderTab {
  return riderTabs.find((tab) => tab === view) ?? "bench";
}

/** The parts of the rider's page with what there is in each; on a wide screen all are in view and these are hidden. */
export function RiderTabs(props: { bench: RiderBench; changes: number; chosen: RiderTab }) {
  const toDo = () =>
    (props.bench.sheet()?.sequence.steps.length ?? 0) + props.bench.disputed().length + props.bench.reported().length;
  const labels: Record<RiderTab, () => string> = {
    bench: () => pit.tabs.bench(toDo()),
    feedback: () => pit.tabs.feedback(props.bench.toAnswer()),
    changelog: () => pit.tabs.changelog(props.changes),
  };
  return (
    <nav class="tabs pit-tabs" aria-label={pit.tabs.label}>
      <For each={riderTabs}>
        {(tab) => (
          <a
            href={`${props.bench.chosen.query()}&view=${tab}`}
            aria-current={props.chosen === tab ? "page" : undefined}
          >
            {labels[tab]()}
          </a>
        )}
      </For>
    </nav>
  );
}
