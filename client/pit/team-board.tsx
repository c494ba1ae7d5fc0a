import { A, useLocation } from "@solidjs/router";
import { createMemo, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { pit } from "#client/text/pit.ts";
import { rulesText } from "#client/text/rules.ts";
import { BoardCardLink } from "./board-card-link.tsx";
import { boardCards } from "./board-cards.ts";
import { createChosenSession } from "./chosen-session.ts";
import { conditionsLine } from "./conditions-line.ts";
import { DisputeList } from "./dispute-list.tsx";
import { EachByKey } from "./each-by-key.tsx";
import { PitGate } from "./pit-gate.tsx";
import { SessionPicker } from "./session-picker.tsx";
import { WeekendLinks } from "./weekend/weekend-links.tsx";

/** The team on one screen: what there is to do on each bike. */
export function TeamBoard() {
  const device = useDevice();
  const chosen = createChosenSession(device);
  const line = createMemo(() => conditionsLine(chosen.programme(), chosen.session()));
  const cards = createMemo(() => {
    const weekendId = chosen.programme()?.weekendId;
    return weekendId === undefined ? [] : boardCards(device.ledger(), weekendId, chosen.session()?.id ?? "");
  });
  const location = useLocation<{ said?: string }>();
  const coursePath = () => `/pit/course${chosen.query()}`;
  return (
    <PitGate>
      <div class="stack">
        <h1>{pit.board.title}</h1>
        <output aria-live="polite">{location.state?.said}</output>
        <Show when={chosen.programme()} fallback={<p>{pit.noWeekend}</p>}>
          <SessionPicker chosen={chosen} />
        </Show>
        <DisputeList query={chosen.query()} />
        <Show when={chosen.programme()}>
          <Show
            when={line()}
            fallback={
              <div class="stack">
                <p>{pit.board.missing}</p>
                <A href={coursePath()} class="button main">
                  {pit.board.enterCourse}
                </A>
              </div>
            }
          >
            {(text) => (
              <div class="pit-conditions">
                <p>{text()}</p>
                <A href={coursePath()} class="button">
                  {pit.board.changeCourse}
                </A>
              </div>
            )}
          </Show>
          <ul class="plain pit-cards">
            <EachByKey each={cards()} keyOf={({ mounted }) => mounted.riderId}>
              {(card) => <BoardCardLink card={card()} query={chosen.query()} />}
            </EachByKey>
          </ul>
        </Show>
        <div class="row">
          <WeekendLinks weekendId={chosen.programme()?.weekendId} />
          <A href="/pit/rules" class="button">
            {rulesText.link}
          </A>
        </div>
      </div>
    </PitGate>
  );
}
