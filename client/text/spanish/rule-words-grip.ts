import type { RuleWords } from "#core/advice/rule-words.ts";

const backToBaseline = "Vuelve a la base en los dos trenes y empieza otra vez desde ahí.";

/** What the rules of grip and of the balance of the two ends say. */
export const gripWords: Readonly<Record<string, RuleWords>> = {
  "front-slides": {
    reason: "El tren delantero resbala: que la cubierta y la horquilla copien mejor el terreno.",
    notice: "El tren delantero mantiene la trazada en las curvas planas.",
    otherwise: "Cuida la llanta: no bajes más la cubierta donde las piedras dan llantazos.",
  },
  "front-pushes-wide": {
    reason: "El tren delantero se abre en las curvas: ponle más peso y deja que ceda al entrar.",
    notice: "El tren delantero entra en la curva y se queda dentro.",
    otherwise: "Un tren trasero demasiado bajo quita peso al delantero: mira su sag.",
  },
  "rear-slides": {
    reason: "El tren trasero resbala: que la cubierta y el amortiguador copien mejor el terreno.",
    notice: "El tren trasero sigue en las curvas y al frenar.",
    otherwise: "Compara los dos trenes: uno trasero alto y duro tiene menos carga con la que agarrar.",
  },
  "rear-steps-out": {
    reason: "El tren trasero se cruza en las curvas: deja que se asiente en ellas y mantenga su carga.",
    notice: "El tren trasero sigue detrás del delantero en las curvas.",
    otherwise: "Mira el tren delantero: si se hunde, levanta el trasero.",
  },
  "tyre-squirms": {
    reason: "La cubierta flanea en las curvas: su carcasa necesita más presión para poder agarrar.",
    notice: "En las curvas apoyan los tacos, y la bici responde al momento.",
    otherwise: "Una llanta más ancha o una carcasa más firme sujetan la cubierta donde la presión cuesta agarre.",
  },
  "front-firmer-pushes-wide": {
    reason: "El tren delantero se abre en las curvas y es más firme respecto al trasero que en la base del piloto.",
    notice: "El tren delantero entra en las curvas como antes.",
    otherwise: backToBaseline,
  },
  "front-softer-dives": {
    reason: "El tren delantero se hunde y es más blando respecto al trasero que en la base del piloto.",
    notice: "La bici va otra vez nivelada en lo empinado.",
    otherwise: backToBaseline,
  },
  "rear-firmer-steps-out": {
    reason: "El tren trasero se cruza en las curvas y es más firme respecto al delantero que en la base del piloto.",
    notice: "El tren trasero sigue al delantero como antes.",
    otherwise: backToBaseline,
  },
  "unsure-and-softer": {
    reason: "El piloto va con poca confianza, y este tren es más blando respecto al otro que en su base.",
    notice: "La bici se nota otra vez nivelada y conocida.",
    otherwise: backToBaseline,
  },
  "unsure-and-firmer": {
    reason: "El piloto va con poca confianza, y este tren es más firme respecto al otro que en su base.",
    notice: "La bici se nota otra vez nivelada y conocida.",
    otherwise: backToBaseline,
  },
};
