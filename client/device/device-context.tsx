import { createContext, type JSX, useContext } from "solid-js";
import { createDevice, type Device } from "./create-device.ts";

const DeviceContext = createContext<Device>();

/** Opens the team on this device for everything inside. */
export function DeviceProvider(props: { children: JSX.Element }) {
  const device = createDevice();
  return <DeviceContext.Provider value={device}>{props.children}</DeviceContext.Provider>;
}

/** The device of the screen that asks. */
export function useDevice(): Device {
  const device = useContext(DeviceContext);
  if (!device) throw new Error("A screen was shown outside the DeviceProvider.");
  return device;
}
