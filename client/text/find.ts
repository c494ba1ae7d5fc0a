import { words } from "./spoken.ts";

export const find = words("find");
