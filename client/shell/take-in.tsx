import { Match, Switch } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { bundleEnding } from "#client/device/hand-off/bundle.ts";
import { handOff } from "#client/text/english/hand-off.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { BundleFacts } from "./bundle-facts.tsx";
import { createTakeIn, type TakeInState } from "./create-take-in.ts";

/** Another device's file into this one. */
export function TakeIn() {
  const { state, read, merge, leave } = createTakeIn(useDevice());
  const choose = (input: HTMLInputElement): void => {
    const file = input.files?.[0];
    // Emptied, so that choosing the same file once more is a choice too.
    if (file)
      void read(file).finally(() => {
        input.value = "";
      });
  };
  return (
    <section class="card stack">
      <h2>{handOff.takeIn.title}</h2>
      <label class="button main take-in">
        {handOff.takeIn.action}
        <input type="file" aria-describedby="take-in-hint" onChange={(event) => choose(event.currentTarget)} />
      </label>
      <p id="take-in-hint">{handOff.takeIn.ending(bundleEnding)}</p>
      <Problem sentence={only(state(), "refused")?.sentence} />
      <div aria-live="polite" class="stack">
        <Switch>
          <Match when={state().state === "reading"}>
            <p>{handOff.takeIn.reading}</p>
          </Match>
          <Match when={only(state(), "described")}>
            {(described) => (
              <BundleFacts
                header={described().bundle.header}
                news={described().news}
                onMerge={() => void merge(described().bundle)}
                onLeave={leave}
              />
            )}
          </Match>
          <Match when={state().state === "merging"}>
            <p>{handOff.takeIn.merging}</p>
          </Match>
          <Match when={only(state(), "merged")}>
            {(merged) => (
              <p>
                <strong>{merged().sentence}</strong>
              </p>
            )}
          </Match>
        </Switch>
      </div>
    </section>
  );
}

function only<Name extends TakeInState["state"]>(
  state: TakeInState,
  name: Name,
): Extract<TakeInState, { state: Name }> | undefined {
  return state.state === name ? (state as Extract<TakeInState, { state: Name }>) : undefined;
}
