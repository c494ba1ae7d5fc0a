import { words } from "./spoken.ts";

export const riderDetails = words("riderDetails");
