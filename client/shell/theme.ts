/** The two looks: "sun" for bright light, "dark" for the van. Kept on the device; the first is the system's wish. */
import { createEffect, createSignal } from "solid-js";
import { browserStorage } from "#client/device/storage/browser-storage.ts";

export type Theme = "sun" | "dark";
const KEY = "pitslate.theme";

/** The theme of the page, and a switch to the other one. */
export function createTheme() {
  const storage = browserStorage();
  const stored = storage.getItem(KEY);
  const preferred: Theme = matchMedia("(prefers-color-scheme: dark)").matches ? "dark" : "sun";
  const [theme, setTheme] = createSignal<Theme>(stored === "sun" || stored === "dark" ? stored : preferred);
  createEffect(() => {
    document.documentElement.dataset.theme = theme();
  });
  const other = (): Theme => (theme() === "sun" ? "dark" : "sun");
  const change = (): void => {
    const next = other();
    storage.setItem(KEY, next);
    setTheme(next);
  };
  return { theme, other, change };
}
