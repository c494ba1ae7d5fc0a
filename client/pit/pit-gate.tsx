import { A } from "@solidjs/router";
import { createMemo, type JSX, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { pit } from "#client/text/pit.ts";
import { Reading } from "./reading.tsx";

/**
 * Shows the pit once this device's copy is read and somebody has said who writes; with `early` as soon as the team itself
 * is known, for a screen that waits for the rest by itself.
 */
export function PitGate(props: { children: JSX.Element; early?: boolean }) {
  const device = useDevice();
  const isRead = () => (props.early ? device.teamLoaded() : device.loaded());
  // A weekend of another season opens more documents: what is typed meanwhile is kept, out of sight until they are read.
  const wasLoaded = createMemo((before: boolean) => before || isRead(), false);
  return (
    <>
      <Show when={!isRead()}>
        <Reading />
      </Show>
      <Show when={wasLoaded()}>
        <div hidden={!isRead()}>
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
