import { words } from "./spoken.ts";

export const baselineReview = words("baselineReview");
