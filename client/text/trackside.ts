import { words } from "./spoken.ts";

export const trackside = words("trackside");
