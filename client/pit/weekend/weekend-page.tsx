import { A, useNavigate, useParams } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { PitGate } from "#client/pit/pit-gate.tsx";
import { pit } from "#client/text/pit.ts";
import { weekend as words } from "#client/text/weekend.ts";
import type { SavedWeekend } from "./create-weekend-form.ts";
import { storedWeekend } from "./weekend-draft.ts";
import { WeekendForm } from "./weekend-form.tsx";

/** A weekend that nobody has entered yet. */
export function NewWeekendPage() {
  const onSaved = createReturn();
  return (
    <PitGate>
      <div class="stack">
        <div class="row">
          <A href="/pit" class="button">
            {pit.backToTeam}
          </A>
        </div>
        <h1>{words.newTitle}</h1>
        <WeekendForm onSaved={onSaved} />
      </div>
    </PitGate>
  );
}

/** A weekend that is known, to be changed. */
export function ChangeWeekendPage() {
  const device = useDevice();
  const params = useParams<{ weekendId: string }>();
  const onSaved = createReturn();
  const known = createMemo(() => {
    const weekendId = params.weekendId ?? "";
    return storedWeekend(device.ledger(), weekendId) ? weekendId : undefined;
  });
  return (
    <PitGate>
      <div class="stack">
        <div class="row">
          <A href={boardOf(params.weekendId ?? "")} class="button">
            {pit.backToTeam}
          </A>
        </div>
        <h1>{words.changeTitle}</h1>
        <Show when={known()} keyed fallback={<p>{words.unknown}</p>}>
          {(weekendId) => <WeekendForm weekendId={weekendId} onSaved={onSaved} />}
        </Show>
      </div>
    </PitGate>
  );
}

/** Back to the board of the weekend that was saved, which says so. */
function createReturn(): (saved: SavedWeekend) => void {
  const navigate = useNavigate();
  return ({ weekendId, said }) => navigate(boardOf(weekendId), { state: { said } });
}

function boardOf(weekendId: string): string {
  return `/pit?${new URLSearchParams({ weekend: weekendId })}`;
}
