import { words } from "./spoken.ts";

export const recordProblems = words("recordProblems");
