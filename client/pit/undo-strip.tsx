import { pit } from "#client/text/pit.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { UndoButton } from "#client/widgets/undo-button.tsx";
import type { RiderBench } from "./create-rider-bench.ts";
import { createUndo } from "./create-undo.ts";

/** What the last act did or why it was refused, and the undo of the last own act: always in the same place. */
export function UndoStrip(props: { bench: RiderBench }) {
  const undo = createUndo(props.bench);
  return (
    <div class="pit-strip">
      <Problem sentence={props.bench.acts.problem()} />
      <div class="pit-strip-row">
        <output aria-live="polite">{props.bench.acts.notice()}</output>
        <UndoButton what={undo.what()} onUndo={undo.undo} fallback={<span class="small">{pit.undo.none}</span>} />
      </div>
    </div>
  );
}
