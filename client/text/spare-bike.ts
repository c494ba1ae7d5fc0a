import { words } from "./spoken.ts";

export const spareBike = words("spareBike");
