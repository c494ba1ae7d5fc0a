/** Which buttons a job has: its touches while it is open, its undo or what could be said instead once it is done. */
import { type Accessor, createMemo } from "solid-js";
import { jobQueue as words } from "#client/text/job-queue.ts";
import type { JobQueueState, QueueRow } from "./create-job-queue.ts";
import type { JobView } from "./job-view.ts";

export interface JobButton {
  readonly id: string;
  readonly label: string;
  act(): void;
}

export interface JobButtonsState {
  /** The one in the first place; undefined when there is none. */
  readonly main: Accessor<JobButton | undefined>;
  readonly others: Accessor<readonly JobButton[]>;
  /** What was done here has been changed by somebody since, so that there is nothing of it to take back. */
  readonly isChangedSince: Accessor<boolean>;
  /** Presses a button at a moment (the event's own time stamp, ms), unless the finger trembled. */
  press(button: JobButton, moment: number): void;
}

export interface JobButtonsContext {
  readonly row: QueueRow;
  readonly queue: JobQueueState;
  readonly view: JobView;
  readonly isMeant: (moment: number) => boolean;
}

/** The buttons of a row; `props` are read as they are when the row changes. */
export function createJobButtons(props: JobButtonsContext): JobButtonsState {
  const buttons = createMemo((): readonly JobButton[] => {
    const { row, queue, view } = props;
    const { job, done } = row;
    if (!done) {
      return view.touches.map((touch) => ({ id: touch.id, label: touch.label, act: () => queue.touch(job, touch) }));
    }
    if (queue.canUndo(done)) {
      const undone = words.undone(view.who, view.kind);
      return [{ id: "undo", label: words.undo, act: () => queue.undo(done, undone) }];
    }
    // What was said of a dispute has no one state before it: it can only be said otherwise.
    return view.touches.flatMap((touch) =>
      touch.labelAfterAll === undefined || touch.said === done.said
        ? []
        : [{ id: touch.id, label: touch.labelAfterAll, act: () => queue.touch(job, touch) }],
    );
  });
  return {
    main: () => buttons()[0],
    others: () => buttons().slice(1),
    isChangedSince: () => props.row.done !== undefined && buttons().length === 0,
    press: (button, moment) => {
      if (props.isMeant(moment)) button.act();
    },
  };
}
