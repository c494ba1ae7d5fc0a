import { A } from "@solidjs/router";
import { type JSX, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/english/common.ts";
import { pit } from "#client/text/english/pit.ts";

/** Shows the pit once this device's copy is read and somebody has said who writes. */
export function PitGate(props: { children: JSX.Element }) {
  const device = useDevice();
  return (
    <Show when={device.loaded()} fallback={<p>{common.loading}</p>}>
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
    </Show>
  );
}
