import { Show } from "solid-js";
import { jobQueue as words } from "#client/text/job-queue.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { createJobButtons } from "./create-job-buttons.ts";
import type { JobQueueState, QueueRow } from "./create-job-queue.ts";
import type { JobView } from "./job-view.ts";

/** The touches of a job. Once one was made its button is the undo: the same button, so that the finger and the keyboard stay. */
export function JobButtons(props: {
  row: QueueRow;
  queue: JobQueueState;
  view: JobView;
  /** Lets a touch through unless it trembled. */
  isMeant: (moment: number) => boolean;
}) {
  const buttons = createJobButtons(props);
  return (
    <>
      <Show when={buttons.main()}>
        {(main) => (
          <button
            type="button"
            class={props.row.done ? "pit-job-undo" : "main"}
            onClick={(event) => buttons.press(main(), event.timeStamp)}
          >
            {main().label}
          </button>
        )}
      </Show>
      <EachByKey each={buttons.others()} keyOf={({ id }) => id}>
        {(other) => (
          <button type="button" class="pit-job-other" onClick={(event) => buttons.press(other(), event.timeStamp)}>
            {other().label}
          </button>
        )}
      </EachByKey>
      <Show when={buttons.isChangedSince()}>
        <p>{words.changedSince}</p>
      </Show>
    </>
  );
}
