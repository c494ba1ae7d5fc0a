import { words } from "./spoken.ts";

export const data = words("data");
