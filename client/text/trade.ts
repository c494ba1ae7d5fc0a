import { words } from "./spoken.ts";

export const trade = words("trade");
