import { A, useNavigate } from "@solidjs/router";
import { Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { pit } from "#client/text/pit.ts";
import { createChosenSession } from "./chosen-session.ts";
import { CourseForm } from "./course-form.tsx";
import { PitGate } from "./pit-gate.tsx";

/** Course and conditions of the chosen weekend. */
export function CoursePage() {
  const device = useDevice();
  const chosen = createChosenSession(device);
  const navigate = useNavigate();
  const back = () => `/pit${chosen.query()}`;
  return (
    <PitGate>
      <div class="stack">
        <div class="row">
          <A href={back()} class="button">
            {pit.backToTeam}
          </A>
        </div>
        <h1>{pit.course.title}</h1>
        <Show when={chosen.programme()?.weekendId} keyed fallback={<p>{pit.noWeekend}</p>}>
          {(weekendId) => (
            <>
              <p>{chosen.programme()?.weekend.name}</p>
              <CourseForm weekendId={weekendId} onSaved={(said) => navigate(back(), { state: { said } })} />
            </>
          )}
        </Show>
      </div>
    </PitGate>
  );
}
