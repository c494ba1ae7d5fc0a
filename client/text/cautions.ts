import { words } from "./spoken.ts";

export const cautions = words("cautions");
