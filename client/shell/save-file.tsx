import { A } from "@solidjs/router";
import { For, Match, Show, Switch } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { handOff } from "#client/text/hand-off.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { createSaveFile, type SaveState } from "./create-save-file.ts";

/** What is on this device into a file, or to the screen as codes. */
export function SaveFile() {
  const device = useDevice();
  const { state, problem, save, share } = createSaveFile(device);
  const made = () => only(state(), "made");
  return (
    <section class="card stack">
      <h2>{handOff.save.title}</h2>
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
        <button type="button" class="main" onClick={() => void save()}>
          {handOff.save.action}
        </button>
        <A href="/hand-off/hand-over" class="button main">
          {handOff.save.byCodes}
        </A>
      </Show>
      <Problem sentence={only(state(), "refused")?.sentence ?? problem()} />
      <div aria-live="polite" class="stack">
        <Switch>
          <Match when={state().state === "busy"}>
            <p>{handOff.save.busy}</p>
          </Match>
          <Match when={made()}>
            {(file) => (
              <>
                <p>
                  <strong>{file().sentence}</strong> {handOff.save.where}
                </p>
                <Show when={file().canShare}>
                  <button type="button" onClick={() => void share(file().file)}>
                    {handOff.save.share}
                  </button>
                </Show>
                <h3>{handOff.save.holds}</h3>
                <ul>
                  <For each={file().lines}>{(line) => <li>{line}</li>}</For>
                </ul>
              </>
            )}
          </Match>
        </Switch>
      </div>
    </section>
  );
}

function only<Name extends SaveState["state"]>(
  state: SaveState,
  name: Name,
): Extract<SaveState, { state: Name }> | undefined {
  return state.state === name ? (state as Extract<SaveState, { state: Name }>) : undefined;
}
