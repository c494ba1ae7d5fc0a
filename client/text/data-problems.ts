import { words } from "./spoken.ts";

export const dataProblems = words("dataProblems");
