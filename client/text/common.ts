import { words } from "./spoken.ts";

export const common = words("common");
