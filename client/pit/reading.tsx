import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";

/** How much of this device's copy has been read. */
export function Reading() {
  const device = useDevice();
  return (
    <p aria-busy="true">
      {common.loading} <progress aria-label={common.loading} value={device.reading().done} max={device.reading().of} />
    </p>
  );
}
