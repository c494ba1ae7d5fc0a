/** "1 Lauf", "7 Läufe": in German one alone is singular. */
export function plural(count: number, one: string, several: string): string {
  return `${count} ${count === 1 ? one : several}`;
}

/** "1 Eintrag", "7 Einträge". */
export function entriesText(count: number): string {
  return plural(count, "Eintrag", "Einträge");
}

/** After "mit" or "von": "1 Eintrag", "7 Einträgen". */
export function entriesDative(count: number): string {
  return plural(count, "Eintrag", "Einträgen");
}
