import { words } from "./spoken.ts";

export const forceChart = words("forceChart");
