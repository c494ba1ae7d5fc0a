import { words } from "./spoken.ts";

export const sentBack = words("sentBack");
