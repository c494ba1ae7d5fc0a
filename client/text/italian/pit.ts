/** Italian texts of the pit workplace. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { advice } from "./pit-advice.ts";
import { bench } from "./pit-bench.ts";
import { course } from "./pit-course.ts";
import { feedback, reported } from "./pit-feedback.ts";
import { goBack, sheet } from "./pit-sheet.ts";
import { service } from "./service.ts";
import { settingsText } from "./settings-count.ts";

export const pit: Said<typeof english> = {
  weekend: "Weekend",
  session: "Sessione",
  noWeekend: "Su questo dispositivo non c’è ancora un weekend di gara.",
  whoFirst: "Di’ chi sei prima di scrivere qualcosa.",
  who: "Chi sei?",
  backToTeam: "Torna al team",
  sessionAt: (session: string, start: string) => `${session}, ${start}`,
  aboutRider: "Weekend, bici, pilota, stampa",
  workingFor: (weekend: string, session: string) => `Per ${weekend}: ${session}`,
  board: {
    enterCourse: "Inserisci pista e condizioni",
    changeCourse: "Modifica pista e condizioni",
    missing: "Gli assetti non si possono calcolare prima che siano inserite la pista e le condizioni della sessione.",
    conditions: (air: string, bench: string | undefined, ground: string) =>
      bench === undefined ? `Aria ${air}, terreno ${ground}` : `Aria ${air}, al banco ${bench}, terreno ${ground}`,
    course: (steep: string, jumpy: string, wet: string, altitude: string) =>
      `Ripida ${steep}, con salti ${jumpy}, bagnata ${wet}, a ${altitude}`,
    plate: (plate: number) => `Numero ${plate}`,
    nothing: "Niente da fare",
    notWorkedOut: "L’assetto aspetta pista e condizioni",
  },
  disputes: {
    title: "In disaccordo",
    ofSetting: (adjuster: string, who: string) => `${adjuster}: valori diversi da ${who}`,
    ofCourse: "La pista: due persone hanno inserito valori diversi",
    ofConditions: (session: string) => `Condizioni (${session}): due persone hanno inserito valori diversi`,
    ofRun: "Una run: due persone l’hanno inserita in modo diverso",
    ofDecision: "Una decisione su una run: due persone hanno deciso in modo diverso",
    ofService: "Una revisione fatta: due persone l’hanno inserita in modo diverso",
    ofServicePlan: "Il piano di revisione del team: due persone hanno inserito valori diversi",
    ofOther: (kind: string, key: string) => `${kind} ${key}: due persone hanno inserito valori diversi`,
    and: " e ",
    says: (who: string) => `${who} dice`,
    noValue: "nessun valore",
    itIs: (value: string) => `Quello giusto: ${value}`,
    readAt: (value: string, temperature: string) => `${value} letto a ${temperature}`,
    somethingElse: "È un’altra cosa",
    device: (device: string) => `sul dispositivo …${device.slice(-4)}`,
    look: "Guarda la bici prima di dire chi ha ragione.",
    settled: (adjuster: string, value: string) => `Chiarito: ${adjuster} ${value}`,
    value: "Che cos’è",
  },
  course,
  tabs: {
    label: "Parti di questa pagina",
    bench: (count: number) => `Banco (${count})`,
    feedback: (count: number) => `Feedback (${count})`,
    changelog: (count: number) => `Storico (${count})`,
  },
  undo: {
    label: (what: string) => `Annulla: ${what}`,
    settings: settingsText,
    left: "lasciato com’è",
    service: (part: string, work: string) => `${part}, revisione fatta: ${work.toLowerCase()}`,
    setting: (adjuster: string, value: string) => `${adjuster} ${value}`,
    done: (what: string) => `Annullato: ${what}`,
    none: "Qui non c’è niente di tuo da annullare",
  },
  sheet,
  reported,
  bench,
  goBack,
  feedback,
  advice,
  byHand: {
    title: "Imposta un altro valore",
    adjuster: "Regolazione",
    value: "Valore",
    now: (value: string) => `Adesso segna: ${value}`,
    note: "Nota, se vuoi",
    save: "È sulla bici",
    saved: (adjuster: string, value: string) => `Regolato a mano: ${adjuster} ${value}`,
  },
  changelog: {
    title: "Storico",
    none: "Su questa bici non è ancora stato regolato niente.",
    line: (from: string, to: string) => `${from} → ${to}`,
    nothing: "nessun valore",
    inDispute: "in disaccordo",
    forRun: (run: string) => `Risponde alla run: ${run}`,
    standings: { "on the bike": "sulla bici", reported: "segnalato" },
    current: "Attuale",
    undo: (value: string) => `Annulla: torna a ${value}`,
    undoNone: "Annulla: nessun valore, come prima",
    back: (value: string) => `Torna a ${value}, come prima di questo`,
    undone: (adjuster: string, value: string) => `${adjuster} di nuovo a ${value}`,
    more: (count: number) => (count === 1 ? "Mostrane 1 altra" : `Mostrane altre ${count}`),
  },
  service,
};
