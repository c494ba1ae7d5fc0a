/** Italian texts of the team's job queue, with which the pit opens. */
import type { jobQueue as english } from "../english/job-queue.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const jobQueue: Said<typeof english> = {
  title: "Che cosa fare adesso",
  none: "Niente da fare: ogni bici è come deve essere per questa sessione.",
  noneYet: "Ancora niente da fare: gli assetti aspettano pista e condizioni.",
  toRiders: "Ai piloti",
  riders: "Piloti",
  jobs: (count: number) => plural(count, "lavoro", "lavori"),
  team: "Il team",
  caution:
    "Il gas è in pressione, le molle sono sotto carico: resta sotto il massimo indicato sul componente. Le avvertenze per ogni passo sono al banco. La prima uscita dopo una modifica è lenta e breve.",
  sessions: {
    title: "Sessioni",
    startsIn: (time: string) => `comincia tra ${time}`,
    running: "in corso",
    over: "finita",
    allOver: "Tutte le sessioni di questo weekend sono finite.",
  },
  kinds: {
    "dispute to check": "Disaccordo da controllare sulla bici",
    "reported change to confirm": "Modifica segnalata da confermare",
    "service overdue": "Revisione scaduta",
    "feedback to decide on": "Feedback su cui decidere",
    "change to make": "Modifica da fare",
    "pressure check": "Pressioni da controllare per la nuova temperatura",
    "feedback missing": "Manca il feedback",
    "service due": "Revisione da fare",
  },
  until: (session: string) => `Entro: ${session},`,
  noneLeft: "Non resta nessuna sessione per cui farlo",
  steps: (count: number) => (count === 1 ? "1 passo" : `${count} passi, in quest’ordine`),
  step: (adjuster: string, from: string | undefined, to: string) =>
    from === undefined ? `${adjuster}: ${to}` : `${adjuster}: ${from} → ${to}`,
  valueOf: (name: string, value: string) => `${name}: ${value}`,
  atBench: "Al banco",
  doneNow: (what: string) => `Fatto: ${what}`,
  undo: "Annulla",
  undone: (rider: string, kind: string) => `Annullato: ${kind}, ${rider}`,
  changedSince: "Da allora è cambiato; quello che vale adesso è al banco.",
  change: {
    what: (count: number) => `${settingsText(count)} da fare`,
    why: (session: string) => `La bici non è come chiedono pista, terreno e temperatura (${session}).`,
    blocked: "Nessun ordine sicuro porta a tutto: guarda al banco.",
    touch: "È tutto sulla bici",
    said: (count: number) => `${settingsText(count)} sulla bici`,
  },
  pressure: {
    what: (count: number) => plural(count, "pressione da controllare", "pressioni da controllare"),
    why: (session: string, air: string, bench: string) =>
      `Regolate a un’altra temperatura. ${session}: aria a ${air}, al banco ${bench}.`,
    touch: "Adesso segnano così",
    said: (count: number) => plural(count, "pressione regolata", "pressioni regolate"),
    note: (session: string) => `La stessa pressione alla temperatura della sessione: ${session}.`,
  },
  reported: {
    why: (who: string, when: string) => `L’ha detto ${who}, ${when}; nessun meccanico l’ha visto.`,
    touch: (value: string) => `Visto: ${value}`,
    said: (adjuster: string, value: string) => `${adjuster} ${value}: confermato`,
  },
  decide: {
    why: (run: string, cause: string) => `${run}. ${cause}.`,
    of: (run: string) => `${run}.`,
    lookFirst: "Prima c’è qualcosa da guardare o da chiedere.",
    noAdvice: "Nessuna regola dei consigli risponde a questa run.",
    noSetup: "Nessun consiglio prima che pista e condizioni siano inserite.",
    put: (value: string) => `Sulla bici: ${value}`,
    putSaid: (adjuster: string, value: string) => `${adjuster} ${value} sulla bici`,
    leave: "Lascia com’è",
    leftSaid: "lasciato com’è",
    read: "Leggi e decidi",
  },
  missing: {
    what: (sessions: string) => `Nessuna run: ${sessions}`,
    why: (count: number) =>
      count === 1 ? "La sessione è finita. Chiedi la run." : "Le sessioni sono finite. Chiedi le run.",
    reasons: { "nothing to report": "Niente da dire", "did not ride": "Non ha girato" },
    look: "Al suo feedback",
  },
  dispute: {
    look: "Guarda la bici prima di dire chi ha ragione.",
    why: "Due persone dicono cose diverse.",
    claim: (value: string, who: string) => `${value}, come dice ${who}`,
    claimAfterAll: (value: string) => `Invece giusto: ${value}`,
    go: "Guarda e di’ qual è",
  },
  service: {
    used: (used: string, limit: string, left: string) => `${used} ${limit}. ${left}`,
    touch: "Revisione fatta: registrala",
    said: (part: string, work: string) => `${part}, ${work.toLowerCase()}, registrato adesso`,
  },
};
