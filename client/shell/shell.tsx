import { A, type RouteSectionProps } from "@solidjs/router";
import { createComputed, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { browserStorage } from "#client/device/storage/browser-storage.ts";
import { common } from "#client/text/common.ts";
import { showUnits } from "#client/text/shown-units.ts";
import { isScreenLocked } from "#client/widgets/screen-lock.ts";
import { createAppUpdate } from "./create-app-update.ts";
import { storedUnits } from "./kept-units.ts";
import { Loaded } from "./loaded.tsx";
import { StatusLine } from "./status-line.tsx";
import { createTheme } from "./theme.ts";
import { useFindKey } from "./use-find-key.ts";

/** What is on every screen: whose device it is, the sync state in words, and the look. */
export function Shell(props: RouteSectionProps) {
  const device = useDevice();
  const theme = createTheme();
  // Before any screen below is made: values are put into words as they are shown.
  createComputed(() => showUnits(storedUnits(browserStorage(), device.memberId())));
  const update = createAppUpdate();
  useFindKey(() => device.member() !== undefined && !isScreenLocked());
  return (
    <>
      <header class="shell-bar" inert={isScreenLocked()}>
        <strong>{common.name}</strong>
        <StatusLine />
        <div class="shell-acts">
          <Show when={device.member()}>
            <A href="/find" class="button" aria-keyshortcuts="Control+/ Meta+/">
              {common.find}
            </A>
          </Show>
          <Show when={device.member()}>
            {(member) => (
              <A
                href="/"
                class="button"
                aria-label={`${common.whoAreYou.holder(member().name)}. ${common.whoAreYou.change}`}
              >
                {member().name}
              </A>
            )}
          </Show>
          <button type="button" onClick={theme.change} aria-label={common.theme.switchTo(common.theme[theme.other()])}>
            {common.theme[theme.other()]}
          </button>
        </div>
      </header>
      <Show when={update.isWaiting() && !isScreenLocked()}>
        <div class="shell-bar">
          <span>{common.update.waiting}</span>
          <button type="button" onClick={update.take}>
            {common.update.take}
          </button>
        </div>
      </Show>
      <main class="page">
        <Loaded>{props.children}</Loaded>
      </main>
    </>
  );
}
