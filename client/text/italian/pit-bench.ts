/** Italian texts of the work at the bench: what goes on the bike, in which order, with which cautions. */
import type { pit as english } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const bench: Said<typeof english.bench> = {
  title: "Da mettere sulla bici",
  order: "In quest’ordine: ogni limite resta rispettato dopo ogni passo.",
  none: "Dalla scheda non resta niente da regolare.",
  tick: "Sulla bici",
  tickLabel: (adjuster: string, value: string) => `${adjuster} ${value}: sulla bici`,
  all: "È tutto sulla bici",
  ticked: (adjuster: string, value: string) => `Sulla bici: ${adjuster} ${value}`,
  tickedAll: (count: number) => `Sulla bici: ${settingsText(count)}`,
  from: (value: string) => `prima ${value}`,
  fromUnknown: "prima ignoto",
  blocked: "Nessun ordine sicuro porta a tutto:",
  cautionsTitle: "Prima di toccare la bici",
  cautions: [
    "Il gas è in pressione e le molle sono sotto carico: tieni lontano il viso e resta sotto il massimo indicato sul componente.",
    "Scarica tutta la pressione prima di aprire qualsiasi cosa; non aprire mai l’idraulica.",
    "La prima uscita dopo una modifica è lenta e breve.",
    "Il manuale del costruttore e il regolamento della gara vengono prima di questo strumento.",
  ],
  how: (count: number) => `Come: ${plural(count, "operazione", "operazioni")}`,
  firstReading: (value: string, leak: string) => `Prima lettura da aspettarsi: ${value}. Sotto ${leak} ha perso aria.`,
  operations: {
    "unload the wheel": "Ruota sollevata da terra, componente scarico.",
    "clean around the valve": "Pulisci intorno alla valvola, poi togli il tappo.",
    "connect the pump": "Collega la pompa.",
    "take the pump off fast": "Stacca la pompa in fretta: quello che soffia è il tubo, non la camera.",
    "cycle the part": "Comprimi il componente alcune volte lungo la corsa, all’inizio piano.",
    "close the cap": "Rimetti il tappo.",
    "write it down": "Spunta qui.",
    "release all air": "Scarica tutta l’aria da ogni camera del componente.",
    "open the part": "Aprilo come dice il manuale del costruttore.",
    "close the part": "Chiudilo con la coppia indicata.",
    "turn to closed": "Gira piano fino a tutto chiuso.",
    "unload the spring": "Svita la ghiera finché la molla è libera.",
  },
  setTo: (adjuster: string, value: string) => `${adjuster}: regola a ${value}.`,
  checkAgain: (value: string) => `Collega la pompa un’altra volta: deve segnare ${value}.`,
  spacersTo: (value: string) => `Passa a ${value}.`,
  springTo: (value: string) => `Monta la molla da ${value}.`,
  collarTo: (value: string) => `Gira la ghiera fino a ${value} di precarico.`,
  clicksTo: (value: string) => `Apri contando ${value}.`,
  stepCautions: {
    "gas under pressure": "Gas in pressione: resta sotto il massimo indicato sul componente.",
    "release all air before opening": "Scarica tutta l’aria da ogni camera prima di aprire il componente.",
    "spring under load": "La molla è sotto carico: scaricala prima di girare o togliere qualsiasi cosa.",
    "count clicks from closed": "Gira piano fino a tutto chiuso, poi conta i clic in apertura.",
    "lower of tyre and rim maximum": "Resta sotto il più basso dei due massimi indicati su gomma e cerchio.",
  },
};
