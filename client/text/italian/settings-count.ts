import { plural } from "./plural.ts";

/** "1 regolazione", "7 regolazioni". */
export function settingsText(count: number): string {
  return plural(count, "regolazione", "regolazioni");
}
