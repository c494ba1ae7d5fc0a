import { words } from "./spoken.ts";

export const thisDevice = words("thisDevice");
