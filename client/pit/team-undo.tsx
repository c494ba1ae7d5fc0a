import { createMemo, createSignal, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { deviceId } from "#client/device/identity.ts";
import { browserStorage } from "#client/device/storage/browser-storage.ts";
import { takeBack } from "#client/device/take-back.ts";
import { pit } from "#client/text/pit.ts";
import { makeOneTouch } from "#client/widgets/one-touch.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { createUndoKey, undoKeyNames } from "#client/widgets/undo-key.ts";
import { lastTeamAct } from "./last-team-act.ts";

/** The undo of what one entered last about the course, the weekend or a rider. */
export function TeamUndo() {
  const device = useDevice();
  const here = deviceId(browserStorage());
  const [said, setSaid] = createSignal<string>();
  const [problem, setProblem] = createSignal<string>();
  const act = createMemo(() => {
    const memberId = device.memberId();
    return memberId === undefined ? undefined : lastTeamAct(device.ledger(), { memberId, deviceId: here });
  });
  const isMeant = makeOneTouch();
  const take = (event: Event): void => {
    const last = act();
    if (!last || !isMeant(event.timeStamp)) return;
    const result = takeBack(device, last.ids);
    setSaid(result.ok ? pit.undo.done(last.what) : undefined);
    setProblem(result.ok ? undefined : recordProblemText(result.problem));
  };
  createUndoKey(take);
  return (
    <>
      <Problem sentence={problem()} />
      <output aria-live="polite">{said()}</output>
      <Show when={act()}>
        {(last) => (
          <button type="button" aria-keyshortcuts={undoKeyNames} onClick={take}>
            {pit.undo.label(last().what)}
          </button>
        )}
      </Show>
    </>
  );
}
