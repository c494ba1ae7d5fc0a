/** Loads the texts of one language: a device never loads the others, but keeps them all for offline starts. */
import { type Language, language } from "./language.ts";
import { type FirstWords, speak, type WorkplaceWords } from "./spoken.ts";

const firstScreens: Record<Language, () => Promise<FirstWords>> = {
  en: () => import("./english/first-screens.ts"),
  de: () => import("./german/first-screens.ts"),
  es: () => import("./spanish/first-screens.ts"),
  fr: () => import("./french/first-screens.ts"),
  it: () => import("./italian/first-screens.ts"),
};

const workplaces: Record<Language, () => Promise<WorkplaceWords>> = {
  en: () => import("./english/workplaces.ts"),
  de: () => import("./german/workplaces.ts"),
  es: () => import("./spanish/workplaces.ts"),
  fr: () => import("./french/workplaces.ts"),
  it: () => import("./italian/workplaces.ts"),
};

/** The texts of the first screen, before its code. */
export async function loadFirstWords(): Promise<void> {
  speak(await firstScreens[language()]());
}

/** A loader of screens that has the workplaces' texts loaded before them. */
export function withWords<Module>(load: () => Promise<Module>): () => Promise<Module> {
  return async () => {
    speak(await workplaces[language()]());
    return load();
  };
}
