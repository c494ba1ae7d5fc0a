/** "1 setting", "7 settings". */
export function settingsText(count: number): string {
  return count === 1 ? "1 setting" : `${count} settings`;
}
