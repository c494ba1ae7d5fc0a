/** The program's own copy in the browser, for starts without a network; and a new version that waits until it is wanted. */

import { registerSW } from "virtual:pwa-register";
import { type Accessor, createSignal } from "solid-js";

export interface AppUpdate {
  /** A newer version has been fetched and waits. */
  readonly isWaiting: Accessor<boolean>;
  /** Starts the newer version; the page is read anew. */
  take(): void;
}

/** Keeps the program for offline starts where the browser can (https, or this machine), and tells of newer versions. */
export function createAppUpdate(): AppUpdate {
  const [isWaiting, setWaiting] = createSignal(false);
  if (!("serviceWorker" in navigator)) return { isWaiting, take: () => {} };
  const update = registerSW({ onNeedRefresh: () => setWaiting(true) });
  return { isWaiting, take: () => void update(true) };
}
