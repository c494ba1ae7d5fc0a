/** Spanish texts of how old a baseline is, what stands behind it, and how far it is from those of the others. */
import type { baselineReview as model } from "../english/baseline-review.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const baselineReview: Said<typeof model> = {
  age: {
    today: "de hoy",
    ahead: "con fecha posterior al reloj de este dispositivo",
    days: (count: number) => `de hace ${plural(count, "día", "días")}`,
    weeks: (count: number) => `de hace ${plural(count, "semana", "semanas")}`,
    months: (count: number) => `de hace ${plural(count, "mes", "meses")}`,
    years: (count: number) => `de hace ${plural(count, "año", "años")}`,
  },
  evidence: {
    none: "todavía sin bajadas con estos valores",
    ridden: (runs: number, weekends: number) =>
      `${plural(runs, "bajada", "bajadas")} en ${plural(weekends, "fin de semana", "fines de semana")}`,
  },
  facts: (age: string, evidence: string) => `${age}, ${evidence}`,
  how: "Cómo se cuentan las bajadas y se comparan los pilotos",
  explained:
    "Una bajada cuenta para una base si la bici llevaba todos sus valores, cada uno a menos de un paso perceptible. Muelles y presiones se comparan por kilo de piloto con los compañeros de equipo que tienen el mismo tipo de pieza y de pista, a partir de cinco pilotos; las presiones, como se leerían a 20 °C al nivel del mar.",
  outlier: {
    high: "Míralo: alto para la masa del piloto.",
    low: "Míralo: bajo para la masa del piloto.",
    sentence: (adjuster: string, value: string, median: string, riders: number) =>
      `${adjuster}: ${value} por kilo; el valor central de ${riders} pilotos es ${median}.`,
  },
};
