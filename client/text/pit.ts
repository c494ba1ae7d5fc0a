import { words } from "./spoken.ts";

export const pit = words("pit");
