import { A } from "@solidjs/router";
import { Show } from "solid-js";
import { jobQueue as words } from "#client/text/job-queue.ts";
import { pit } from "#client/text/pit.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import type { JobQueueState } from "./create-job-queue.ts";

/** The way to every rider's bench, with how much there is to do at it. */
export function RiderLinks(props: {
  riders: ReturnType<JobQueueState["riders"]>;
  /** All copies have been read: before that nobody knows of jobs. */
  isRead: boolean;
  hasSetups: boolean;
  query: string;
}) {
  const stateOf = (open: number) =>
    open > 0 ? words.jobs(open) : props.hasSetups ? pit.board.nothing : pit.board.notWorkedOut;
  return (
    <nav class="stack" id="riders" aria-label={words.riders}>
      <h2>{words.riders}</h2>
      <ul class="plain pit-riders">
        <EachByKey each={props.riders} keyOf={({ mounted }) => mounted.riderId}>
          {(rider) => (
            <li>
              <A href={`/pit/rider/${rider().mounted.riderId}${props.query}`} class="button pit-rider-link">
                <strong class="pit-card-name">{rider().mounted.rider.name}</strong>
                <Show when={rider().mounted.rider.plate}>
                  {(plate) => <span class="tag">{pit.board.plate(plate())}</span>}
                </Show>
                <Show when={props.isRead}>
                  <span class="pit-rider-state">{stateOf(rider().open)}</span>
                </Show>
              </A>
            </li>
          )}
        </EachByKey>
      </ul>
    </nav>
  );
}
