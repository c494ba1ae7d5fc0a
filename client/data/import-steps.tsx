import { createMemo, Match, Show, Switch } from "solid-js";
import { data } from "#client/text/data.ts";
import { Problem } from "#client/widgets/problem.tsx";
import type { createImport, ImportState } from "./create-import.ts";
import { filePlaceText, rowRefusalText } from "./data-problem-text.ts";
import { LongList } from "./long-list.tsx";

/** What a file would change, the choice to take it or leave it, and its undo. */
export function ImportSteps(props: { steps: ReturnType<typeof createImport> }) {
  const state = () => props.steps.state();
  return (
    <>
      <Problem sentence={only(state(), "refused")?.sentence} />
      <div aria-live="polite" class="stack">
        <Switch>
          <Match when={only(state(), "busy")}>{(busy) => <p>{busy().sentence}</p>}</Match>
          <Match when={only(state(), "previewed")}>{(seen) => <Seen seen={seen()} steps={props.steps} />}</Match>
          <Match when={only(state(), "done")}>
            {(done) => (
              <>
                <p>
                  <strong>{done().sentence}</strong>
                </p>
                <Show when={done().records.length > 0}>
                  <button type="button" onClick={() => props.steps.undo()}>
                    {data.undo}
                  </button>
                </Show>
              </>
            )}
          </Match>
        </Switch>
      </div>
    </>
  );
}

function Seen(props: { seen: Extract<ImportState, { state: "previewed" }>; steps: ReturnType<typeof createImport> }) {
  const lines = () => props.seen.preview.lines;
  const refused = () => props.seen.preview.refused;
  const fresh = createMemo(() => lines().filter(({ state }) => state === "new"));
  const changes = createMemo(() => lines().filter(({ state }) => state === "changes"));
  return (
    <>
      <h3>{data.preview.title(props.seen.name)}</h3>
      <Show when={props.seen.again}>{(again) => <p>{again()}</p>}</Show>
      <p class="data-counts">
        {data.preview.counts(fresh().length, changes().length, props.seen.preview.same, refused().length)}
      </p>
      <LongList
        title={data.preview.refused}
        lines={refused().map(({ place, refusal }) => data.preview.line(filePlaceText(place), rowRefusalText(refusal)))}
      />
      <LongList
        title={data.preview.changes}
        lines={changes().map(({ place, differences }) =>
          data.preview.line(
            filePlaceText(place),
            differences.map(({ field, from, to }) => data.preview.difference(field, from, to)).join("; "),
          ),
        )}
      />
      <LongList title={data.preview.fresh} lines={fresh().map(({ place }) => filePlaceText(place))} />
      <Show when={lines().length === 0}>
        <p>{data.preview.nothing}</p>
      </Show>
      <div class="row">
        <Show when={lines().length > 0}>
          <button type="button" class="main" onClick={() => void props.steps.take()}>
            {refused().length > 0 ? data.preview.takeGood(lines().length) : data.preview.take}
          </button>
        </Show>
        <button type="button" onClick={() => props.steps.leave()}>
          {data.preview.leave}
        </button>
      </div>
    </>
  );
}

function only<Name extends ImportState["state"]>(
  state: ImportState,
  name: Name,
): Extract<ImportState, { state: Name }> | undefined {
  return state.state === name ? (state as Extract<ImportState, { state: Name }>) : undefined;
}
