import { words } from "./spoken.ts";

export const handOffCodes = words("handOffCodes");
