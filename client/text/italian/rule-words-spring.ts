import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of the sag and of the feel of the spring say. */
export const springWords: Readonly<Record<string, RuleWords>> = {
  "sag-above-target": {
    reason:
      "Sta troppo basso nella sua escursione: correggi il sag prima di tutto quello che viene più avanti nella corsa.",
    notice: "Sta più alto e ha più escursione di riserva.",
    otherwise: "Misura di nuovo il sag, in marcia e da fermo; una molla che non tiene il sag forse perde aria.",
  },
  "sag-below-target": {
    reason:
      "Sta troppo alto nella sua escursione: correggi il sag prima di tutto quello che viene più avanti nella corsa.",
    notice: "Segue meglio le piccole asperità e la ruota resta a terra.",
    otherwise: "Cerca un attrito: un componente che si pianta mostra meno sag di quanto ne dà la molla.",
  },
  "start-harsh": {
    reason: "Le piccole asperità passano: libera l’inizio della corsa.",
    notice: "Vibrazioni e sassolini si sentono meno.",
    otherwise:
      "Paraoli secchi e un cambio dell’olio di lubrificazione scaduto danno la stessa sensazione: guarda la revisione.",
  },
  "start-too-soft": {
    reason: "Cede subito e si sente vago: un po’ più di sostegno all’inizio.",
    notice: "Sta più su quando si pompa e si pedala.",
    otherwise: "Misura il sag; quello che sembra morbido forse sta troppo basso.",
  },
  "fork-dives": {
    reason: "La forcella affonda a metà corsa: lì ci vuole più sostegno.",
    notice: "Sta più alta nelle sponde e sul ripido.",
    otherwise: "Guarda il posteriore: se è troppo alto, spinge il peso sulla forcella.",
  },
  "dives-under-braking": {
    reason: "La forcella affonda quando si frena: sostienila contro la spinta lenta del peso.",
    notice: "L’anteriore resta più alto all’ingresso delle curve ripide, e le braccia lavorano meno.",
    otherwise: "Guarda il posteriore: se in frenata si alza di scatto, butta il peso in avanti.",
  },
  "shock-wallows": {
    reason: "Il posteriore si siede a metà corsa: lì ci vuole più sostegno.",
    notice: "Sostiene quando si pompa e spinge bene sulle rampe.",
    otherwise:
      "Confronta anteriore e posteriore: un posteriore più morbido dell’anteriore si siede qualunque cosa faccia l’idraulica.",
  },
  "sinks-in-berms": {
    reason: "Il posteriore si siede sotto la lunga spinta di una sponda: prima le basse velocità, poi più molla.",
    notice: "Tiene l’altezza nelle sponde e ne esce con velocità.",
    otherwise: "Controlla il sag con il pilota in assetto da gara; forse è aumentato.",
  },
  "middle-harsh": {
    reason: "I colpi secchi passano a metà corsa: lascia cedere prima l’idraulica.",
    notice: "Radici e sassi si sentono più arrotondati.",
    otherwise: "Occhio a un ritorno troppo lento: impaccato, ogni colpo è duro.",
  },
  "hands-go-numb": {
    reason:
      "Mani che s’addormentano vuol dire colpi rapidi e duri che arrivano al manubrio: li devono prendere l’idraulica e la gomma.",
    notice: "Le mani reggono tutta la run.",
    otherwise: "Contano anche manopole, manubrio e leve dei freni; un intorpidimento che resta è cosa da medico.",
  },
  "bounces-off-stones": {
    reason: "I sassi buttano la ruota fuori linea: deve cedere più in fretta.",
    notice: "La ruota passa sopra i sassi invece di essere sbalzata di lato.",
    otherwise: "Una gomma troppo dura per la sua carcassa rimbalza qualunque cosa faccia l’idraulica.",
  },
};
