/** German texts of the filters of a changelog, of two moments compared, and of the way back to one. */
import type { moments as model } from "../english/moments.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const moments: Said<typeof model> = {
  adjuster: "Einstellpunkt",
  everyAdjuster: "Alle Einstellpunkte",
  weekend: "Wochenende",
  everyWeekend: "Alle Wochenenden",
  noneOfThese: "Keine Änderung dieser Art.",
  title: "Zwei Zeitpunkte vergleichen",
  earlier: "Damals",
  later: "Vergleich",
  before: (weekend: string) => `Vor dem Wochenende ${weekend}`,
  now: "Jetzt",
  after: (moment: string, what: string, who: string) => `${moment}: ${what}, ${who}`,
  several: settingsText,
  one: (adjuster: string, value: string) => `${adjuster} ${value}`,
  same: "Zwischen beiden ist nichts anders.",
  differ: (count: number) => `${plural(count, "Einstellpunkt ist", "Einstellpunkte sind")} anders.`,
  atTheBench: "Drücke, wie sie an der Werkbank der gewählten Session anzeigen.",
  asTyped: "Drücke, wie sie eingetippt wurden: Die Bedingungen der Session sind nicht eingetragen.",
  difference: "Differenz",
  more: (size: string) => `${size} mehr`,
  less: (size: string) => `${size} weniger`,
  unknown: "unbekannt",
  disputed: "strittig",
  backTitle: (moment: string) => `Zurück zu: ${moment}`,
  back: "Alles ist am Bike wie damals",
  done: (count: number) => `Zurück zu diesem Zeitpunkt: ${settingsText(count)} am Bike`,
  note: (moment: string) => `Zurück zu: ${moment}.`,
  already: "Das Bike ist wie damals.",
  needsConditions:
    "Um zurückzugehen, trag erst Strecke und Bedingungen ein: Davon hängt ab, was ein Druck anzeigen muss.",
  order:
    "Mach die Schritte in dieser Reihenfolge und sag dann, dass es getan ist: So bleibt nach jedem Schritt jede Grenze eingehalten.",
  unknownThen: (adjusters: string) => `Bleibt, wie es ist, weil von damals nichts bekannt ist: ${adjusters}.`,
  leftOut: (adjusters: string) => `Ausgelassen, weil damals oder jetzt strittig: ${adjusters}.`,
};
