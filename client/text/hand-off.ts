import { words } from "./spoken.ts";

export const handOff = words("handOff");
