import { pit } from "#client/text/pit.ts";
import type { ChosenSession } from "./chosen-session.ts";
import { SessionPicker } from "./session-picker.tsx";

/** The weekend and session that are worked for, with the choice of another folded away. */
export function SessionFold(props: { chosen: ChosenSession }) {
  return (
    <details>
      <summary class="pit-summary">
        {pit.workingFor(props.chosen.programme()?.weekend.name ?? "", props.chosen.session()?.session.name ?? "")}
      </summary>
      <SessionPicker chosen={props.chosen} />
    </details>
  );
}
