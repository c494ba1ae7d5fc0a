import { plural } from "./plural.ts";

/** "1 réglage", "7 réglages". */
export function settingsText(count: number): string {
  return plural(count, "réglage", "réglages");
}
