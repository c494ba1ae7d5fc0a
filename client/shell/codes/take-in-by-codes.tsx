import { A } from "@solidjs/router";
import { Match, Show, Switch } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { TakeInSteps } from "#client/shell/take-in-steps.tsx";
import { handOff } from "#client/text/hand-off.ts";
import { handOffCodes } from "#client/text/hand-off-codes.ts";
import { createTakeInByCodes } from "./create-take-in-by-codes.ts";
import { ScanCodes } from "./scan-codes.tsx";
import { ShowCodes } from "./show-codes.tsx";
import "./codes.css";

/** Another device's news into this one, from screen to camera. */
export function TakeInByCodes() {
  const device = useDevice();
  const { takeIn, step, sequence, problem, showHoldings, readAnswer, take } = createTakeInByCodes(device);
  const isAnswered = () => takeIn.state().state !== "idle";
  return (
    <div class="stack hand-off">
      <h1>{handOffCodes.receive.title}</h1>
      <Switch>
        <Match when={isAnswered()}>
          <section class="card stack">
            <TakeInSteps takeIn={takeIn} />
            <div class="row">
              <Show when={takeIn.state().state === "merged"}>
                <A href="/hand-off/hand-over" class="button">
                  {handOffCodes.receive.onward}
                </A>
              </Show>
              <button type="button" onClick={() => void showHoldings()}>
                {handOffCodes.receive.back}
              </button>
            </div>
          </section>
        </Match>
        <Match when={step() === "read"}>
          <section class="stack">
            <h2>{handOffCodes.receive.readNext}</h2>
            <ScanCodes
              hint={handOffCodes.receive.readHow}
              wanted={["answer", "file"]}
              onDone={(kind, content) => void take(kind, content)}
            />
            <div class="row">
              <button type="button" onClick={() => void showHoldings()}>
                {handOffCodes.receive.back}
              </button>
            </div>
          </section>
        </Match>
        <Match when={step() === "show"}>
          <section class="stack">
            <h2>{handOffCodes.receive.showFirst}</h2>
            <Show when={sequence()} keyed fallback={<p>{problem() ?? handOffCodes.preparing}</p>}>
              {(made) => (
                <ShowCodes sequence={made}>
                  <p>{handOffCodes.receive.how}</p>
                  <Show when={device.member() === undefined}>
                    <p>{handOffCodes.receive.nobody}</p>
                  </Show>
                  <div class="row">
                    <button type="button" class="main" onClick={readAnswer}>
                      {handOffCodes.receive.next}
                    </button>
                  </div>
                </ShowCodes>
              )}
            </Show>
          </section>
        </Match>
      </Switch>
      <div class="row">
        <A href="/hand-off" class="button">
          {handOff.back}
        </A>
      </div>
    </div>
  );
}
