import { A } from "@solidjs/router";
import { Match, Show, Switch } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { handOff } from "#client/text/hand-off.ts";
import { handOffCodes } from "#client/text/hand-off-codes.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { createHandOverByCodes, type HandOverState } from "./create-hand-over-by-codes.ts";
import { ScanCodes } from "./scan-codes.tsx";
import { ShowCodes } from "./show-codes.tsx";
import "./codes.css";

/** What this device knows to another one, from screen to camera. */
export function HandOverByCodes() {
  const device = useDevice();
  return (
    <div class="stack hand-off">
      <h1>{handOffCodes.send.title}</h1>
      <Show
        when={device.member()}
        fallback={
          <>
            <p>{handOff.save.whoFirst}</p>
            <A href="/" class="button main">
              {handOff.save.who}
            </A>
          </>
        }
      >
        <ReadThenShow />
      </Show>
      <div class="row">
        <A href="/hand-off" class="button">
          {handOff.back}
        </A>
      </div>
    </div>
  );
}

function ReadThenShow() {
  const { state, answer, showEverything, again } = createHandOverByCodes(useDevice());
  return (
    <Switch fallback={<p>{handOffCodes.preparing}</p>}>
      <Match when={only(state(), "reading")}>
        {(reading) => (
          <section class="stack">
            <h2>{handOffCodes.send.readFirst}</h2>
            <Problem sentence={reading().sentence} />
            <ScanCodes
              hint={handOffCodes.send.how}
              wanted={["holdings"]}
              onDone={(_, content) => void answer(content)}
            />
            <p>{handOffCodes.send.everythingHow}</p>
            <div class="row">
              <button type="button" onClick={() => void showEverything()}>
                {handOffCodes.send.everything}
              </button>
            </div>
          </section>
        )}
      </Match>
      <Match when={only(state(), "showing")}>
        {(showing) => (
          <section class="stack">
            <h2>{handOffCodes.send.showNext}</h2>
            <ShowCodes sequence={showing().sequence}>
              <p>
                <strong>{showing().sentence}</strong>
              </p>
              <div class="row">
                <button type="button" onClick={again}>
                  {handOffCodes.send.again}
                </button>
              </div>
            </ShowCodes>
          </section>
        )}
      </Match>
    </Switch>
  );
}

function only<Name extends HandOverState["state"]>(
  state: HandOverState,
  name: Name,
): Extract<HandOverState, { state: Name }> | undefined {
  return state.state === name ? (state as Extract<HandOverState, { state: Name }>) : undefined;
}
