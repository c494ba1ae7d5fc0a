import { withWords } from "#client/text/load-words.ts";

/** The screens of the review workplace, with their texts. */
export const loadReview = withWords(() => import("./review-screens.ts"));
