import { words } from "./spoken.ts";

export const whyNot = words("whyNot");
