import { words } from "./spoken.ts";

export const rainLock = words("rainLock");
