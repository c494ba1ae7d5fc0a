import { A } from "@solidjs/router";
import { onMount, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { find as words } from "#client/text/find.ts";
import { EachByKey } from "#client/widgets/each-by-key.tsx";
import { createFind, MOST_SHOWN } from "./create-find.ts";
import "./find.css";

/** Looking for riders, weekends, changes, runs and notes on this device. */
export function FindScreen() {
  const device = useDevice();
  const finding = createFind(device);
  let field: HTMLInputElement | undefined;
  onMount(() => field?.focus());
  return (
    <div class="stack find">
      <h1>{words.title}</h1>
      <Show when={device.member()} fallback={<p>{words.notYet}</p>}>
        <search class="stack">
          <label class="field">
            {words.field}
            <input
              ref={field}
              type="text"
              autocomplete="off"
              value={finding.typed()}
              onInput={(event) => finding.type(event.currentTarget.value)}
            />
          </label>
          <p>{words.hint}</p>
        </search>
        <Show when={finding.isSearching()}>
          <p>
            <progress aria-label={words.searching} /> {words.searching}
          </p>
        </Show>
        <Show when={finding.found()}>
          {(found) => (
            <>
              <p aria-live="polite">
                <Show when={!finding.isSearching()}>
                  {found().length === 0 ? words.none : words.count(found().length)}
                  <Show when={finding.isCut()}>. {words.cut(MOST_SHOWN)}</Show>
                </Show>
              </p>
              <ul class="plain stack">
                <EachByKey each={found()} keyOf={({ key }) => key}>
                  {(line) => (
                    <li>
                      <A href={line().path} class="find-line">
                        <span class="tag">{line().kind}</span>
                        <strong>{line().title}</strong>
                        <Show when={line().details !== ""}>
                          <span>{line().details}</span>
                        </Show>
                      </A>
                    </li>
                  )}
                </EachByKey>
              </ul>
            </>
          )}
        </Show>
      </Show>
      <p>
        <button type="button" onClick={() => history.back()}>
          {common.back}
        </button>
      </p>
    </div>
  );
}
