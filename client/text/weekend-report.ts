import { words } from "./spoken.ts";

export const weekendReport = words("weekendReport");
