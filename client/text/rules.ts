import { words } from "./spoken.ts";

export const rulesText = words("rulesText");
