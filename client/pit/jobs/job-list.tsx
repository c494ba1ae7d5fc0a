import { Show } from "solid-js";
import { jobQueue as words } from "#client/text/job-queue.ts";
import { Caution } from "#client/widgets/caution.tsx";
import { createSettling } from "#client/widgets/create-settling.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import type { JobQueueState } from "./create-job-queue.ts";
import { JobRow } from "./job-row.tsx";
import type { JobContext } from "./job-touch.ts";

/** The team's jobs, what is due first at the top. */
export function JobList(props: { queue: JobQueueState; context: JobContext; query: string; nothing: string }) {
  // Another device's act moves the rows: a press must not land on another rider's "It is all on the bike".
  const isSettling = createSettling(() => props.queue.rows().map(({ job }) => job.id));
  return (
    <section class="stack" aria-label={words.title} aria-busy={props.queue.isWorking()}>
      <Show when={props.queue.rows().length > 0} fallback={<p>{props.nothing}</p>}>
        <Caution>{words.caution}</Caution>
        <ol class="plain stack" classList={{ "pit-jobs-settling": isSettling() }}>
          <EachByKey each={props.queue.rows()} keyOf={({ job }) => job.id}>
            {(row) => <JobRow row={row()} queue={props.queue} context={props.context} query={props.query} />}
          </EachByKey>
        </ol>
      </Show>
    </section>
  );
}
