import { words } from "./spoken.ts";

export const screenAwake = words("screenAwake");
