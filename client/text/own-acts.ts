import { words } from "./spoken.ts";

export const ownActs = words("ownActs");
