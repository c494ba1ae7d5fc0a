import { Match, Switch } from "solid-js";
import { handOff } from "#client/text/hand-off.ts";
import { Problem } from "#client/widgets/problem.tsx";
import { BundleFacts } from "./bundle-facts.tsx";
import type { createTakeIn, TakeInState } from "./create-take-in.ts";

/** What came from another device: why it is refused, or what it would bring, the choice to merge it, and that it is merged. */
export function TakeInSteps(props: { takeIn: ReturnType<typeof createTakeIn> }) {
  const state = () => props.takeIn.state();
  return (
    <>
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
                onMerge={() => void props.takeIn.merge(described().bundle)}
                onLeave={() => props.takeIn.leave()}
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
    </>
  );
}

function only<Name extends TakeInState["state"]>(
  state: TakeInState,
  name: Name,
): Extract<TakeInState, { state: Name }> | undefined {
  return state.state === name ? (state as Extract<TakeInState, { state: Name }>) : undefined;
}
