import { plural } from "./plural.ts";

/** "1 Einstellung", "7 Einstellungen". */
export function settingsText(count: number): string {
  return plural(count, "Einstellung", "Einstellungen");
}
