/**
 * The texts of the language that is spoken. Screens import them by part (`#client/text/pit.ts`), as plain values: so they
 * have to be loaded before the screen's code is, and a language is changed by starting the page anew.
 */
import type * as FirstScreens from "./english/first-screens.ts";
import type * as Workplaces from "./english/workplaces.ts";

/** What the first screen needs. English is the model: what it has, every language has to have. */
export type FirstWords = Said<typeof FirstScreens>;
/** What comes with the first workplace that is opened. */
export type WorkplaceWords = Said<typeof Workplaces>;
type Catalogue = FirstWords & WorkplaceWords;

/** A text of the model stands for any text; what fills in facts keeps what it is given. */
export type Said<Model> = Model extends string
  ? string
  : Model extends (...facts: infer Facts) => infer Words
    ? (...facts: Facts) => Words extends string ? string : Words
    : { readonly [Name in keyof Model]: Said<Model[Name]> };

const spoken: Partial<Catalogue> = {};

/** Adds texts to those that are spoken. */
export function speak(words: Partial<Catalogue>): void {
  Object.assign(spoken, words);
}

/** One part of the texts. A screen that is loaded before its texts is a fault of the program. */
export function words<Part extends keyof Catalogue>(part: Part): Catalogue[Part] {
  const found = spoken[part];
  if (!found) throw new Error(`The texts "${part}" are not loaded yet.`);
  return found;
}
