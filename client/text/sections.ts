import { words } from "./spoken.ts";

export const sections = words("sections");
