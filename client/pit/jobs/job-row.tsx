import { A } from "@solidjs/router";
import { createMemo, createUniqueId, For, Show, untrack } from "solid-js";
import { jobQueue as words } from "#client/text/job-queue.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import { Problem } from "#client/widgets/problem.tsx";
import type { JobQueueState, QueueRow } from "./create-job-queue.ts";
import { JobButtons } from "./job-buttons.tsx";
import type { JobContext } from "./job-touch.ts";
import { jobView } from "./job-view.ts";
import { placeAddress } from "./place-address.ts";

/** One job: rider, what, why and until when; what one touch does, and its undo in the same place. */
export function JobRow(props: { row: QueueRow; queue: JobQueueState; context: JobContext; query: string }) {
  const job = createMemo(() => props.row.job);
  // A job is a new one whenever anything that it shows has changed; what else changes in the ledger costs nothing here.
  const view = createMemo(() => {
    const shown = job();
    return untrack(() => jobView(props.context, shown));
  });
  const isMeant = makeOneTouch();
  const headingId = createUniqueId();
  return (
    <li class={props.row.done ? "card pit-job pit-job-done" : "card pit-job"} data-job={job().kind}>
      <div class="pit-job-facts">
        <h3 id={headingId}>
          <span class="pit-job-who">{view().who}</span> <span class="tag">{view().kind}</span>
        </h3>
        <Show when={!props.row.done} fallback={<p class="pit-job-what">{words.doneNow(props.row.done?.said ?? "")}</p>}>
          <p class="pit-job-what">{view().what}</p>
          <p>{view().why}</p>
        </Show>
        <p>
          <Show when={view().until} fallback={words.noneLeft}>
            {(until) => (
              <>
                {until().session} <time datetime={until().startsAt}>{until().start}</time>
              </>
            )}
          </Show>
        </p>
        <Show when={!props.row.done && view().steps.length > 0}>
          <details>
            <summary class="pit-summary">{words.steps(view().steps.length)}</summary>
            <ol>
              <For each={view().steps}>{(step) => <li>{step}</li>}</For>
            </ol>
          </details>
        </Show>
      </div>
      <fieldset class="pit-job-acts" aria-labelledby={headingId}>
        <JobButtons row={props.row} queue={props.queue} view={view()} isMeant={isMeant} />
        <Show when={view().place}>
          {(place) => (
            <A
              href={placeAddress(place().path, props.query)}
              class={view().touches.length > 0 || props.row.done ? "button" : "button main"}
              aria-describedby={headingId}
            >
              {place().label}
            </A>
          )}
        </Show>
        <Problem sentence={props.queue.problemOf(job().id)} />
      </fieldset>
    </li>
  );
}
