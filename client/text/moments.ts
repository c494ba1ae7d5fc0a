import { words } from "./spoken.ts";

export const moments = words("moments");
