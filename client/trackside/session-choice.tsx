import { Show } from "solid-js";
import { trackside } from "#client/text/trackside.ts";
import { Choice } from "#client/widgets/choice.tsx";
import type { RiderAtHand } from "./create-rider-at-hand.ts";

/** The weekend, and its sessions to choose from with one tap. */
export function SessionChoice(props: { at: RiderAtHand }) {
  const sessions = () => props.at.plan()?.sessions ?? [];
  return (
    <Show when={props.at.plan()} fallback={<p>{trackside.noWeekend}</p>}>
      {(plan) => (
        <Show when={sessions().length > 0} fallback={<p>{trackside.noSessions}</p>}>
          <Choice
            legend={plan().weekend.name}
            required
            options={sessions().map(({ id }) => id)}
            labelOf={(id) => sessions().find((session) => session.id === id)?.session.name ?? id}
            value={props.at.session()?.id}
            onChange={(id) => {
              if (id !== undefined) props.at.chooseSession(id);
            }}
          />
        </Show>
      )}
    </Show>
  );
}
