import { words } from "./spoken.ts";

export const print = words("print");
