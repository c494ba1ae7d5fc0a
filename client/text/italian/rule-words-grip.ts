import type { RuleWords } from "#core/advice/rule-words.ts";

const backToBaseline = "Torna alla base davanti e dietro e riparti da lì.";

/** What the rules of grip and of the balance of the two ends say. */
export const gripWords: Readonly<Record<string, RuleWords>> = {
  "front-slides": {
    reason: "L’anteriore scivola: fai seguire meglio il terreno a gomma e forcella.",
    notice: "L’anteriore tiene la linea nelle curve in piano.",
    otherwise: "Attento al cerchio: non scendere ancora con la gomma dove i sassi lo battono.",
  },
  "front-pushes-wide": {
    reason: "L’anteriore allarga in curva: mettici più peso e lascialo cedere all’ingresso.",
    notice: "L’anteriore entra in curva e ci resta.",
    otherwise: "Un posteriore troppo basso toglie peso all’anteriore: guarda il suo sag.",
  },
  "rear-slides": {
    reason: "Il posteriore scivola: fai seguire meglio il terreno a gomma e ammortizzatore.",
    notice: "Il posteriore segue in curva e in frenata.",
    otherwise: "Confronta anteriore e posteriore: un posteriore alto e rigido ha meno carico per fare presa.",
  },
  "rear-steps-out": {
    reason: "Il posteriore parte in curva: lascialo appoggiarsi e tenere il suo carico.",
    notice: "Il posteriore resta dietro all’anteriore in curva.",
    otherwise: "Guarda l’anteriore: se affonda, solleva il posteriore.",
  },
  "tyre-squirms": {
    reason: "La gomma si piega in curva: la carcassa vuole più pressione prima di poter fare presa.",
    notice: "Le curve si fanno sui tasselli, e la bici risponde subito.",
    otherwise: "Un cerchio più largo o una carcassa più robusta sostiene la gomma dove la pressione costa grip.",
  },
  "front-firmer-pushes-wide": {
    reason: "L’anteriore allarga ed è diventato più sostenuto rispetto al posteriore che nella base del pilota.",
    notice: "L’anteriore entra in curva come prima.",
    otherwise: backToBaseline,
  },
  "front-softer-dives": {
    reason: "L’anteriore affonda ed è diventato più morbido rispetto al posteriore che nella base del pilota.",
    notice: "La bici è di nuovo in piano sul ripido.",
    otherwise: backToBaseline,
  },
  "rear-firmer-steps-out": {
    reason: "Il posteriore parte ed è diventato più sostenuto rispetto all’anteriore che nella base del pilota.",
    notice: "Il posteriore segue come prima.",
    otherwise: backToBaseline,
  },
  "unsure-and-softer": {
    reason:
      "Il pilota ha poca fiducia, e qui la bici è diventata più morbida rispetto all’altra estremità che nella sua base.",
    notice: "La bici si sente di nuovo equilibrata e familiare.",
    otherwise: backToBaseline,
  },
  "unsure-and-firmer": {
    reason:
      "Il pilota ha poca fiducia, e qui la bici è diventata più sostenuta rispetto all’altra estremità che nella sua base.",
    notice: "La bici si sente di nuovo equilibrata e familiare.",
    otherwise: backToBaseline,
  },
};
