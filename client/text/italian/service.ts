/** Italian texts of the service of a bike's parts, as the pit shows it. */
import type { service as english } from "../english/service.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const service: Said<typeof english> = {
  title: "Revisione",
  works: {
    fork: { "bath oil": "Olio di lubrificazione dei foderi", complete: "Revisione completa" },
    shock: { "bath oil": "Olio di lubrificazione della camera d’aria", complete: "Revisione completa" },
  },
  states: { "in use": "In uso", due: "Da fare", overdue: "Scaduta" },
  hours: (used: string) => `${used} h`,
  limit: (limit: string) => `su ${limit} h`,
  dueNext: "Da fare con la prossima run.",
  overNext: "Con la prossima run le ore finiscono.",
  untilDue: (left: string) => `${left} prima che sia da fare.`,
  untilLimit: (left: string) => `${left} prima che le ore finiscano.`,
  runs: (count: number) => `${count} run`,
  runsAndSessions: (runs: string, sessions: number) =>
    sessions === 0
      ? `${runs}, meno di una sessione come quelle di questo weekend,`
      : `${runs}, o ${plural(sessions, "sessione", "sessioni")} come in questo weekend,`,
  over: "Le ore sono finite.",
  neverDone: "Nessuna revisione è registrata: le ore si contano dalla prima run.",
  lastDone: (what: string, who: string, when: string) => `Ultima: ${what}, ${who}, ${when}`,
  hoursBefore: (hours: string) => `Allora c’erano sopra ${hours} h.`,
  onTheBikeThen: (count: number) => `Che cosa c’era allora sulla bici: ${settingsText(count)}`,
  onTheBikeNow: (count: number) => `Si registra insieme quello che c’è adesso sulla bici: ${settingsText(count)}`,
  nothingOnTheBike: "Di questa bici non si conosce nessuna regolazione: non c’è niente da registrare insieme.",
  inDispute: (adjusters: string) => `In disaccordo, quindi non registrato: ${adjusters}. Guarda prima la bici.`,
  setting: (adjuster: string, value: string) => `${adjuster}: ${value}`,
  done: (part: string) => `Revisione fatta: ${part.toLowerCase()}`,
  what: "Che cosa è stato fatto",
  completeHint: "Una revisione completa comprende l’olio di lubrificazione: ripartono entrambi.",
  before: "Ore di guida da quando è stata fatta",
  beforeHint: "Solo per una revisione fatta in passato. Lascia vuoto se è stata fatta adesso.",
  hoursUnit: "h",
  note: "Nota, se vuoi",
  save: "Registra",
  needsWork: "Scegli che cosa è stato fatto.",
  saved: (part: string, work: string) => `Registrato: ${part}, ${work.toLowerCase()}`,
  caution:
    "Un componente danneggiato o con la revisione scaduta va a un meccanico qualificato: non compensarlo con le regolazioni. Il manuale del costruttore viene prima: se chiede la revisione prima, è da fare prima.",
  counting: "Come si contano le ore",
  countingRuns: (minutes: string) =>
    `Ogni run conta con il suo tempo per i componenti che erano allora sulla sua bici, anche su un’altra bici; una run senza tempo conta ${minutes} minuti.`,
  countingGround: (weights: string) =>
    `Un’ora conta secondo il terreno: ${weights}. Un terreno non inserito conta come secco.`,
  weight: (ground: string, weight: string) => `${ground} ${weight} h`,
  countingLeft: (minutes: string) =>
    `Quello che resta si conta in run come quelle di questo weekend; prima della prima, in run di ${minutes} minuti sul secco.`,
  countingDue: (percent: string) => `Da fare a partire dal ${percent} % delle ore.`,
  countingSource: "Pratica comune, se il costruttore non dice altro.",
};
