import { createMemo, createSignal } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { deviceId } from "#client/device/identity.ts";
import { browserStorage } from "#client/device/storage/browser-storage.ts";
import { takeBack } from "#client/device/take-back.ts";
import { pit } from "#client/text/pit.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { UndoButton } from "#client/widgets/undo-button.tsx";
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
  const undo = (): void => {
    const last = act();
    if (!last) return;
    const result = takeBack(device, last.ids);
    setSaid(result.ok ? pit.undo.done(last.what) : undefined);
    setProblem(result.ok ? undefined : recordProblemText(result.problem));
  };
  return (
    <>
      <Problem sentence={problem()} />
      <output aria-live="polite">{said()}</output>
      <UndoButton what={act()?.what} onUndo={undo} />
    </>
  );
}
