import { words } from "./spoken.ts";

export const whoHas = words("whoHas");
