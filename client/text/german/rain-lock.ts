/** German texts of the lock against rain. */
import type { rainLock as model } from "../english/rain-lock.ts";
import type { Said } from "../spoken.ts";

export const rainLock: Said<typeof model> = {
  lock: "Regensperre",
  locked: "Gegen Regen gesperrt: nur Werte, hier lässt sich nichts ändern.",
  open: "Zum Öffnen halten",
  holding: "Weiter halten …",
  short: "Das war zu kurz: Halt eine Sekunde lang.",
  // Not "Druck", which is the pressure.
  confirm: "Diese Eingabe kam ohne Finger und ohne Taste. Bestätige sie, um die Seite zu öffnen.",
  confirmed: "Seite öffnen",
  toSet: "Einzustellen, in dieser Reihenfolge",
  nothingToSet: "Nach dem Setup-Blatt ist nichts mehr einzustellen.",
  onTheBike: (place: string) => `Am Bike: ${place}`,
  from: (value: string) => `von ${value}`,
  fromUnknown: "vorher unbekannt",
};
