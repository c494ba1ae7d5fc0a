import { withWords } from "#client/text/load-words.ts";

/** The screens of the trackside workplace, with their texts. */
export const loadTrackside = withWords(() => import("./trackside-screens.ts"));
