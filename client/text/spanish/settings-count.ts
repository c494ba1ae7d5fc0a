import { plural } from "./plural.ts";

/** "1 ajuste", "7 ajustes". */
export function settingsText(count: number): string {
  return plural(count, "ajuste", "ajustes");
}
