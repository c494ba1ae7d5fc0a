/** The languages of the screens, and which of them a device speaks. */

/** Each language with its own name, by its tag (BCP 47), in the order in which they are offered. */
export const languageNames = { en: "English", fr: "Français", de: "Deutsch", es: "Español", it: "Italiano" } as const;
export type Language = keyof typeof languageNames;
export const languages = Object.keys(languageNames) as readonly Language[];

/** Tag by which numbers and dates are written. English ones as most of the world reads them: day before month, 24 hours. */
const formats: Record<Language, string> = { en: "en-GB", fr: "fr-FR", de: "de-DE", es: "es-ES", it: "it-IT" };

const KEY = "pitslate.language";

let current: Language = "en";

/** The language that is spoken. */
export function language(): Language {
  return current;
}

/** Tag for `Intl` in the language that is spoken. */
export function formatTag(): string {
  return formats[current];
}

/** From here on this language is spoken; its texts have to be loaded besides (`load-words.ts`). */
export function setLanguage(next: Language): void {
  current = next;
}

/**
 * The language of a device: the one that was chosen on it, else the first that its owner reads (tags in order of
 * preference, as `navigator.languages` has them) and we have, else English.
 */
export function languageFor(chosen: string | null, wanted: readonly string[]): Language {
  if (isLanguage(chosen)) return chosen;
  return wanted.map((tag) => tag.split("-")[0]?.toLowerCase()).find(isLanguage) ?? "en";
}

/** The language that was chosen on this device; null when none was. */
export function chosenLanguage(storage: Pick<Storage, "getItem">): string | null {
  return storage.getItem(KEY);
}

/** Keeps the choice; the next start of the page speaks it. */
export function chooseLanguage(storage: Pick<Storage, "setItem">, chosen: Language): void {
  storage.setItem(KEY, chosen);
}

function isLanguage(tag: string | null | undefined): tag is Language {
  return languages.some((known) => known === tag);
}
