import { words } from "./spoken.ts";

export const weekend = words("weekend");
