import { A } from "@solidjs/router";
import { For, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import type { SyncStatus } from "#client/device/sync-status.ts";
import { common } from "#client/text/common.ts";
import { handOff } from "#client/text/hand-off.ts";
import { formatClock } from "#client/widgets/format.ts";

/** The sync state in words, and what the server refused. Offline is a fact, never an error, with a way round it. */
export function StatusLine() {
  const device = useDevice();
  const isCutOff = () => device.status().state === "offline" || device.status().state === "not saved on this device";
  const unreadable = () => device.ledger().unreadable().length;
  return (
    <div class="small status-line">
      <output aria-live="polite" data-sync={device.status().state}>
        {sentenceOf(device.status())}
      </output>
      <Show when={isCutOff()}>
        <A href="/hand-off" class="button">
          {handOff.link}
        </A>
      </Show>
      <Show when={unreadable() > 0}>
        <div>{common.status.unreadable(unreadable())}</div>
      </Show>
      <For each={device.refusals()}>{(sentence) => <div role="alert">{sentence}</div>}</For>
    </div>
  );
}

function sentenceOf(status: SyncStatus): string {
  switch (status.state) {
    case "loading":
      return common.status.loading;
    case "on the server":
      return common.status.onServer;
    case "on this device only":
      return common.status.onThisDevice(status.waiting);
    case "offline":
      return common.status.offline(formatClock(status.since), status.waiting);
    case "not saved on this device":
      return common.status.notSaved(status.waiting);
    case "saving":
      return common.status.saving;
  }
}
