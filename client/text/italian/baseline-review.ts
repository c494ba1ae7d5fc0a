/** Italian texts of how old a baseline is, what stands behind it, and how far it is from those of the others. */
import type { baselineReview as english } from "../english/baseline-review.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const baselineReview: Said<typeof english> = {
  age: {
    today: "di oggi",
    ahead: "con una data più avanti dell’orologio di questo dispositivo",
    days: (count: number) => `di ${plural(count, "giorno", "giorni")} fa`,
    weeks: (count: number) => `di ${plural(count, "settimana", "settimane")} fa`,
    months: (count: number) => `di ${plural(count, "mese", "mesi")} fa`,
    years: (count: number) => `di ${plural(count, "anno", "anni")} fa`,
  },
  evidence: {
    none: "ancora nessuna run con questi valori",
    ridden: (runs: number, weekends: number) => `${runs} run in ${weekends} weekend`,
  },
  facts: (age: string, evidence: string) => `${age}, ${evidence}`,
  how: "Come si contano le run e si confrontano i piloti",
  explained:
    "Una run conta per una base quando tutti i suoi valori erano sulla bici, ognuno a meno di un passo percepibile. Molle e pressioni si confrontano per chilo di pilota con i compagni di team che hanno lo stesso genere di componente e di pista, da cinque piloti in su; le pressioni come si leggerebbero a 20 °C al livello del mare.",
  outlier: {
    high: "Da guardare: alto per la massa del pilota.",
    low: "Da guardare: basso per la massa del pilota.",
    sentence: (adjuster: string, value: string, median: string, riders: number) =>
      `${adjuster} ${value} al chilo; il valore di mezzo tra ${plural(riders, "pilota", "piloti")} è ${median}.`,
  },
};
