import { useDevice } from "#client/device/device-context.tsx";
import { UndoButton } from "#client/widgets/undo-button.tsx";
import { createOwnUndo } from "./own-undo.ts";

/** The undo of what the rider saved last. */
export function UndoLine(props: { riderId: string }) {
  const undo = createOwnUndo(useDevice(), () => props.riderId);
  return (
    <>
      <output aria-live="polite">{undo.said()}</output>
      <UndoButton what={undo.what()} onUndo={undo.undo} />
    </>
  );
}
