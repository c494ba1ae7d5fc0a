/** Italian texts of the pages that are printed, and of the screens that show them before. */
import type { print as english } from "../english/print.ts";
import type { Said } from "../spoken.ts";
import { entriesText } from "./plural.ts";

export const print: Said<typeof english> = {
  links: { sheet: "Stampa la scheda assetto", team: "Stampa il foglio di sessione", report: "Rapporto del weekend" },
  who: "Chi sei?",
  forWhom: "Prima di’ chi sei: la pagina porta il nome di chi l’ha stampata.",
  forTeam: "Questa pagina contiene tutti i piloti: la stampa un meccanico o un team manager.",
  noWeekend: "Su questo dispositivo non c’è ancora un weekend di gara.",
  weekend: "Weekend",
  session: "Sessione",
  paper: "Carta",
  print: "Stampa",
  hint: "Nella finestra di stampa del browser lascia la scala al 100 %. È tutto nero su bianco; lo sfondo non serve.",
  preview: "La pagina come verrà stampata",
  back: { pit: "Torna al team", rider: "Torna al pilota", review: "Torna all’analisi" },
  sheetTitle: "Scheda assetto",
  teamTitle: "Foglio di sessione",
  plate: (plate: number) => `N. ${plate}`,
  mass: (mass: string) => `pilota ${mass}`,
  sessionAt: (session: string, start: string) => `${session}, ${start}`,
  course: (steep: string, jumpy: string, wet: string, altitude: string) =>
    `Ripida ${steep}, con salti ${jumpy}, bagnata ${wet}, a ${altitude}`,
  conditions: (air: string, bench: string | undefined, ground: string) =>
    bench === undefined ? `Aria ${air}, terreno ${ground}` : `Aria ${air}, al banco ${bench}, terreno ${ground}`,
  printed: (moment: string, who: string) => `Stampato ${moment} da ${who}.`,
  state: (moment: string, entries: number) =>
    `Può essere vecchio: situazione ${moment}, l’ultima di ${entriesText(entries)} su questo dispositivo.`,
  noState: "Può essere vecchio: su questo dispositivo non c’è nessuna voce.",
  ends: { front: "Anteriore: forcella e gomma", rear: "Posteriore: ammortizzatore e gomma" },
  columns: {
    adjuster: "Regolazione",
    baseline: "Base",
    weekend: "Alla sessione",
    bench: "Al banco",
    onTheBike: "Sulla bici",
    read: "Letto",
    step: "Passo",
    from: "Da",
    to: "A",
    first: "La pompa segna prima",
    again: "Poi segna",
    most: "Mai sopra",
    rider: "Pilota",
  },
  states: {
    "to set": "",
    set: "",
    adjusted: "corretto",
    reported: "dice il pilota",
    disputed: "guarda la bici",
    "no value": "",
  },
  tyrePressure: "Pressione gomme",
  inDispute: "in disaccordo",
  none: "–",
  notKnown: "ignoto",
  leakBelow: (reading: string) => `sotto ${reading} ha perso aria`,
  now: (value: string) => `adesso ${value}`,
  blend: "La base è una miscela di quelle proprie del pilota, in parti della pista.",
  missingTypes: (types: string) => `Nessuna base propria per pista ${types}: la sostituiscono le altre basi.`,
  notFitted:
    "Non tarato su un sag misurato: le correzioni della fisica sono giuste nel verso e approssimative nella misura.",
  noBaseline: "Questa bici non ha ancora una base: non c’è niente su cui regolarla.",
  refused: (adjuster: string, limit: string) => `${adjuster}: ${limit}`,
  sag: {
    title: "Sag",
    atBaseline: (end: string, value: string) => `${end}: ${value} alla base, adesso`,
    unmeasured: (end: string) => `${end}: mai misurato, adesso`,
    millimetres: "mm",
  },
  bench: {
    title: "Da mettere sulla bici, in quest’ordine",
    order:
      "Così ogni limite resta rispettato dopo ogni passo. Leggi alla temperatura del banco; scrivi quello che leggi.",
    nothing: "Dalla scheda non resta niente da regolare.",
    blocked: "Nessun ordine sicuro porta a tutto:",
    cautionsTitle: "Prima di toccare la bici",
    cautions: [
      "Il gas è in pressione e le molle sono sotto carico: tieni lontano il viso e resta sotto il massimo indicato sul componente.",
      "Scarica tutta la pressione prima di aprire qualsiasi cosa; non aprire mai l’idraulica o una camera in pressione.",
      "I componenti usurati, danneggiati o con la revisione scaduta vanno a un meccanico qualificato; non si compensano con le regolazioni.",
      "La prima uscita dopo una modifica è lenta e breve.",
      "Il manuale del costruttore e il regolamento della gara vengono prima di questa scheda.",
    ],
    steps: (numbers: string, count: number, caution: string) =>
      `${count === 1 ? "Passo" : "Passi"} ${numbers}: ${caution}`,
    stepCautions: {
      "gas under pressure": "gas in pressione, resta sotto il massimo indicato sul componente.",
      "release all air before opening": "scarica tutta l’aria da ogni camera prima di aprire il componente.",
      "spring under load": "scarica la molla prima di girare o togliere qualsiasi cosa.",
      "count clicks from closed": "gira piano fino a tutto chiuso, poi conta i clic in apertura.",
      "lower of tyre and rim maximum": "resta sotto il più basso dei due massimi indicati su gomma e cerchio.",
    },
  },
  first: "Gas in pressione, molle sotto carico: leggi prima «Prima di toccare la bici».",
  notes: "Note",
  team: {
    hint: "Grande: quello da regolare al banco. Piccolo: quello che c’è sulla bici. La casella è per quello che leggi.",
  },
};
