import { withWords } from "#client/text/load-words.ts";

/** The screens of the pit workplace, with their texts. */
export const loadPit = withWords(() => import("./pit-screens.ts"));
