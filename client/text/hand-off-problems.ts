import { words } from "./spoken.ts";

export const handOffProblems = words("handOffProblems");
