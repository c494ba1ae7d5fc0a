import { A, useLocation } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { jobQueue as words } from "#client/text/job-queue.ts";
import { pit } from "#client/text/pit.ts";
import { print } from "#client/text/print.ts";
import { rulesText } from "#client/text/rules.ts";
import { createWallClock } from "#client/widgets/create-wall-clock.ts";
import { createChosenSession } from "./chosen-session.ts";
import { conditionsLine } from "./conditions-line.ts";
import { countdownLines } from "./jobs/countdown-lines.ts";
import { createJobQueue } from "./jobs/create-job-queue.ts";
import { JobList } from "./jobs/job-list.tsx";
import { RiderLinks } from "./jobs/rider-links.tsx";
import { SessionCountdown } from "./jobs/session-countdown.tsx";
import { PitGate } from "./pit-gate.tsx";
import { Reading } from "./reading.tsx";
import { SessionPicker } from "./session-picker.tsx";
import { TeamUndo } from "./team-undo.tsx";
import { WeekendLinks } from "./weekend/weekend-links.tsx";

/** The team on one screen: what there is to do next, and the way to each bike. */
export function TeamBoard() {
  const device = useDevice();
  const now = createWallClock();
  const chosen = createChosenSession(device, now);
  const line = createMemo(() => conditionsLine(chosen.programme(), chosen.session()));
  const countdown = createMemo(() => countdownLines(chosen.programme()?.sessions ?? [], now()));
  const isRead = createMemo((before: boolean) => before || device.loaded(), false);
  const queue = createJobQueue({ device, isRead, chosen, now, later: (turn) => void setTimeout(turn, 0) });
  const context = {
    device,
    get programme() {
      return chosen.programme();
    },
    get sessionId() {
      return chosen.session()?.id;
    },
  };
  const location = useLocation<{ said?: string }>();
  const coursePath = () => `/pit/course${chosen.query()}`;
  return (
    <PitGate early>
      <div class="stack">
        <div>
          <h1 class="pit-queue-title">{words.title}</h1>
          <Show when={chosen.programme()} fallback={<p>{pit.noWeekend}</p>}>
            {(plan) => <p>{pit.workingFor(plan().weekend.name, chosen.session()?.session.name ?? "")}</p>}
          </Show>
        </div>
        <output aria-live="polite">{queue.notice() ?? location.state?.said}</output>
        <Show when={chosen.programme()}>
          <SessionCountdown lines={countdown()} />
          <Show when={line() === undefined}>
            <p>{pit.board.missing}</p>
            <A href={coursePath()} class="button main">
              {pit.board.enterCourse}
            </A>
          </Show>
        </Show>
        <a href="#riders" class="button pit-to-riders">
          {words.toRiders}
        </a>
        <div class="pit-queue">
          <Show when={isRead()} fallback={<Reading />}>
            <JobList
              queue={queue}
              context={context}
              query={chosen.query()}
              nothing={line() === undefined ? words.noneYet : words.none}
            />
          </Show>
          <div class="stack">
            <Show when={chosen.programme()}>
              <SessionPicker chosen={chosen} />
            </Show>
            <Show when={line()}>
              {(text) => (
                <div class="pit-conditions">
                  <p>{text()}</p>
                  <A href={coursePath()} class="button">
                    {pit.board.changeCourse}
                  </A>
                </div>
              )}
            </Show>
            <TeamUndo />
            <RiderLinks
              riders={queue.riders()}
              isRead={isRead()}
              hasSetups={line() !== undefined}
              query={chosen.query()}
            />
          </div>
        </div>
        <div class="row">
          <A href={`/print/team${chosen.query()}`} class="button">
            {print.links.team}
          </A>
          <A href={`/print/weekend${chosen.query()}`} class="button">
            {print.links.report}
          </A>
          <WeekendLinks weekendId={chosen.programme()?.weekendId} />
          <A href="/pit/rules" class="button">
            {rulesText.link}
          </A>
        </div>
      </div>
    </PitGate>
  );
}
