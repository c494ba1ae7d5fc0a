/** Italian texts of the filters of a changelog, of two moments compared, and of the way back to one. */
import type { moments as english } from "../english/moments.ts";
import type { Said } from "../spoken.ts";
import { settingsText } from "./settings-count.ts";

export const moments: Said<typeof english> = {
  adjuster: "Regolazione",
  everyAdjuster: "Tutte le regolazioni",
  weekend: "Weekend",
  everyWeekend: "Tutti i weekend",
  noneOfThese: "Nessuna modifica di queste.",
  title: "Confronta due momenti",
  earlier: "Allora",
  later: "In confronto a",
  before: (weekend: string) => `Prima del weekend ${weekend}`,
  now: "Adesso",
  after: (moment: string, what: string, who: string) => `${moment}: ${what}, ${who}`,
  several: settingsText,
  one: (adjuster: string, value: string) => `${adjuster} ${value}`,
  same: "Tra i due non cambia niente.",
  differ: (count: number) => (count === 1 ? "1 regolazione diversa." : `${count} regolazioni diverse.`),
  atTheBench: "Pressioni come si leggono al banco della sessione scelta.",
  asTyped: "Pressioni come sono state scritte: le condizioni della sessione non sono inserite.",
  difference: "Differenza",
  more: (size: string) => `${size} in più`,
  less: (size: string) => `${size} in meno`,
  unknown: "ignoto",
  disputed: "in disaccordo",
  backTitle: (moment: string) => `Torna a: ${moment}`,
  back: "Tutto è sulla bici com’era allora",
  done: (count: number) => `Tornato a quel momento: ${settingsText(count)} sulla bici`,
  note: (moment: string) => `Torna a: ${moment}.`,
  already: "La bici è com’era allora.",
  needsConditions:
    "Per tornare indietro inserisci prima pista e condizioni: da quelle dipende che cosa deve segnare una pressione.",
  order: "Fai i passi in quest’ordine, poi di’ che è fatto: così ogni limite resta rispettato dopo ogni passo.",
  unknownThen: (adjusters: string) => `Resta com’è, perché di allora non si sa niente: ${adjusters}.`,
  leftOut: (adjusters: string) => `Lasciato fuori, perché in disaccordo allora o adesso: ${adjusters}.`,
};
