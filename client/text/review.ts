import { words } from "./spoken.ts";

export const review = words("review");
