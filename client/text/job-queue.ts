import { words } from "./spoken.ts";

export const jobQueue = words("jobQueue");
