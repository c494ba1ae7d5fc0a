/** Whether the screen takes no input, so that drops of rain change nothing; what stands on every screen heeds it too. */
import { createSignal } from "solid-js";

const [isLocked, setLocked] = createSignal(false);

export const isScreenLocked = isLocked;
export const lockScreen = (locked: boolean): void => void setLocked(locked);
