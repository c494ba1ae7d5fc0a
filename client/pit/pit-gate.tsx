import { A } from "@solidjs/router";
import { createMemo, type JSX, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";

/** Shows the pit once this device's copy is read and somebody has said who writes. */
export function PitGate(props: { children: JSX.Element }) {
  const device = useDevice();
  // A weekend of another season opens more documents: what is typed meanwhile is kept, out of sight until they are read.
  const wasLoaded = createMemo((before: boolean) => before || device.loaded(), false);
  return (
    <>
      <Show when={!device.loaded()}>
        <p>{common.loading}</p>
      </Show>
      <Show when={wasLoaded()}>
        <div hidden={!device.loaded()}>
          <Show
            when={device.memberId() !== undefined}
            fallback={
              <div class="stack">
                <p>{pit.whoFirst}</p>
                <A href="/" class="button main">
                  {pit.who}
                </A>
              </div>
            }
          >
            {props.children}
          </Show>
        </div>
      </Show>
    </>
  );
}
