/** Spanish texts of the service of a bike's parts, as the pit shows it. */
import type { service as model } from "../english/service.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const service: Said<typeof model> = {
  title: "Mantenimiento",
  works: {
    fork: { "bath oil": "Aceite de lubricación de las botellas", complete: "Mantenimiento completo" },
    shock: { "bath oil": "Aceite de lubricación de la cámara de aire", complete: "Mantenimiento completo" },
  },
  states: { "in use": "En uso", due: "Pendiente", overdue: "Vencido" },
  hours: (used: string) => `${used} h`,
  limit: (limit: string) => `de ${limit} h`,
  dueNext: "Toca con la próxima bajada.",
  overNext: "Las horas se acaban con la próxima bajada.",
  untilDue: (left: string) => `${left} hasta que toque.`,
  untilLimit: (left: string) => `${left} hasta que se acaben las horas.`,
  runs: (count: number) => plural(count, "bajada", "bajadas"),
  runsAndSessions: (runs: string, sessions: number) =>
    sessions === 0
      ? `${runs}, menos de una sesión como las de este fin de semana,`
      : `${runs}, o ${plural(sessions, "sesión", "sesiones")} como las de este fin de semana,`,
  over: "Las horas se han acabado.",
  neverDone: "No hay ningún mantenimiento apuntado: las horas cuentan desde la primera bajada.",
  lastDone: (what: string, who: string, when: string) => `Último: ${what}, ${who}, ${when}`,
  hoursBefore: (hours: string) => `Llevaba entonces ${hours} h.`,
  onTheBikeThen: (count: number) => `Lo que llevaba puesto la bici: ${settingsText(count)}`,
  onTheBikeNow: (count: number) => `Se apunta también lo que lleva puesto ahora la bici: ${settingsText(count)}`,
  nothingOnTheBike: "No se conoce ningún ajuste de esta bici: no se puede apuntar ninguno.",
  inDispute: (adjusters: string) => `Con discrepancia, por eso no se apunta: ${adjusters}. Mira antes la bici.`,
  setting: (adjuster: string, value: string) => `${adjuster}: ${value}`,
  done: (part: string) => `Mantenimiento hecho: ${part.toLowerCase()}`,
  what: "Qué se ha hecho",
  completeHint: "Un mantenimiento completo incluye el aceite de lubricación: los dos vuelven a empezar.",
  before: "Horas rodadas desde que se hizo",
  beforeHint: "Solo si el mantenimiento se hizo antes. Si se acaba de hacer, déjalo vacío.",
  hoursUnit: "h",
  note: "Nota, si quieres",
  save: "Apuntarlo",
  needsWork: "Elige qué se ha hecho.",
  saved: (part: string, work: string) => `Apuntado: ${part}, ${work.toLowerCase()}`,
  caution:
    "Una pieza vencida o dañada va a un mecánico cualificado: no lo tapes con ajustes. Manda el manual del fabricante: si pide el mantenimiento antes, toca antes.",
  counting: "Cómo se cuentan las horas",
  countingRuns: (minutes: string) =>
    `Cada bajada cuenta con su tiempo para las piezas que llevaba entonces la bici, también si era otra bici; una bajada sin tiempo cuenta como ${minutes} minutos.`,
  countingGround: (weights: string) =>
    `Una hora cuenta según el terreno: ${weights}. Un terreno sin apuntar cuenta como seco.`,
  weight: (ground: string, weight: string) => `${ground} ${weight} h`,
  countingLeft: (minutes: string) =>
    `Lo que queda se cuenta en bajadas como las de este fin de semana; antes de la primera, en bajadas de ${minutes} minutos en seco.`,
  countingDue: (percent: string) => `Toca a partir del ${percent} % de las horas.`,
  countingSource: "Práctica habitual, si el fabricante no dice otra cosa.",
};
