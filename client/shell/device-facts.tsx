import { onMount, Show } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { thisDevice } from "#client/text/this-device.ts";
import { formatMegabytes } from "#client/widgets/format.ts";

/** How safe what is on this device is, and what to do where it is not. */
export function DeviceFacts() {
  const { storagePromise, storageSpace, measureSpace } = useDevice();
  const isAtRisk = () => storagePromise() === "not granted" || storagePromise() === "not offered";
  const short = () => {
    const space = storageSpace();
    return space?.isShort ? space : undefined;
  };
  onMount(() => void measureSpace());
  return (
    <section class="stack">
      <h2>{thisDevice.title}</h2>
      <p data-storage-promise={storagePromise()}>{thisDevice.promise[storagePromise()]}</p>
      <Show when={isAtRisk()}>
        <ul>
          <Show when={!matchMedia("(display-mode: standalone)").matches}>
            <li>{thisDevice.install}</li>
          </Show>
          <li>{thisDevice.save}</li>
        </ul>
      </Show>
      <Show when={short()}>
        {(space) => <p>{thisDevice.short(formatMegabytes(space().used), formatMegabytes(space().left))}</p>}
      </Show>
    </section>
  );
}
