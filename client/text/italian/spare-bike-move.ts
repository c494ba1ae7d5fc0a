/** Italian texts of a part's history, and of moving it to another bike. */
import type { Place } from "#core/team/place.ts";
import type { spareBike as english } from "../english/spare-bike.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";
import { plural } from "./plural.ts";

export const move: Said<typeof english.move> = {
  title: "Un componente: la sua storia, e come spostarlo",
  part: "Componente",
  option: (part: string, bike: string) => `${part}, su ${bike}`,
  optionAside: (part: string) => `${part}, su nessuna bici`,
  to: "Spostalo su",
  choose: "Scegli dove",
  aside: "Nessuna bici, messo da parte",
  swapLegend: (part: string) => `Al suo posto c’è già un componente: ${part}`,
  swap: { swap: "I due si scambiano di posto", aside: "Quello si mette da parte" },
  airLegend: "L’aria in quello che si sposta",
  air: { kept: "è rimasta dentro", released: "è stata scaricata" },
  needsPlace: "Scegli dove va il componente.",
  needsAir: "Di’ se l’aria è rimasta nel componente.",
  goesAlong:
    "Le ore di guida, le revisioni e le regolazioni del componente vanno con lui. Quello che nessuno ne sa è ignoto anche sulla nuova bici; una gomma smontata non ha una pressione conosciuta.",
  cautions: [
    "Scarica tutta l’aria prima di aprire un componente. Non allentare mai un componente con la molla sotto carico.",
    "Scarica l’aria di una gomma prima di toglierla dal cerchio.",
    "Stringi con le coppie del costruttore, e fai guardare i componenti usurati o danneggiati a un meccanico qualificato.",
  ],
  save: "È spostato",
  done: (part: string, bike: string) => `Spostato: ${part} su ${bike}`,
  doneAside: (part: string) => `Spostato: ${part} è messo da parte`,
  why: (part: string) => `Arrivato con il componente: ${part}.`,
  whyGone: (part: string) => `Non si conosce più: ${part} è stato spostato.`,
  problems: {
    unknownPart: "Il componente non si conosce più.",
    unknownBike: "La bici non si conosce più.",
    samePlace: "Il componente è già lì.",
    notThere: "Il componente non è dov’era: qualcuno l’ha spostato, o dice un’altra cosa. Guarda le bici.",
    placeInDispute: (place: Place, bike: string) =>
      `${common.places[place]} di ${bike}: in disaccordo quale sia. Chiariscilo prima.`,
    settingsInDispute: (bike: string, adjusters: string) =>
      `Su ${bike} c’è disaccordo: ${adjusters}. Guarda la bici e chiariscilo prima.`,
  },
  historyTitle: (part: string) => `Storia di ${part}`,
  stay: (bike: string, from: string | undefined, until: string | undefined) =>
    until === undefined
      ? from === undefined
        ? `${bike}, da quando si conosce`
        : `${bike}, da ${from} in poi`
      : from === undefined
        ? `${bike}, fino a ${until}`
        : `${bike}, da ${from} fino a ${until}`,
  noBike: "Su nessuna bici",
  placeInDispute: "Dove si trova è in disaccordo: la sua storia si vede di nuovo quando è chiarito.",
  hours: (work: string, hours: string) => `${work}: ${hours} h dall’ultima volta`,
  noChanges: "Qui non è stata registrata nessuna regolazione.",
  changes: (count: number) => plural(count, "regolazione fatta", "regolazioni fatte"),
  change: (adjuster: string, value: string, who: string, when: string) => `${adjuster} ${value}, ${who}, ${when}`,
  more: (count: number) => `e ${count} precedenti`,
};
