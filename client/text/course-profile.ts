import { words } from "./spoken.ts";

export const courseProfile = words("courseProfile");
