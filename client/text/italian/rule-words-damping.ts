import type { RuleWords } from "#core/advice/rule-words.ts";

const damperWantsService = (doing: string): string => `Se ${doing} non cambia niente, l’idraulica è da revisionare.`;

/** What the rules of damping say. */
export const dampingWords: Readonly<Record<string, RuleWords>> = {
  "packs-down": {
    reason: "Si impacca: non è tornato su prima del colpo dopo, e s’indurisce colpo dopo colpo.",
    notice: "Le serie di radici non diventano più dure verso la fine.",
    otherwise: "Ancora un passo; poi meno compressione.",
  },
  "harsher-hit-by-hit": {
    reason: "S’indurisce di colpo in colpo: non è tornato su prima di quello dopo.",
    notice: "Le serie di radici non diventano più dure verso la fine.",
    otherwise: damperWantsService("aprire"),
  },
  "returns-too-slowly": {
    reason: "Torna su troppo piano e non ha escursione per il colpo dopo: apri il ritorno.",
    notice: "È di nuovo su prima del colpo dopo.",
    otherwise: damperWantsService("aprire"),
  },
  "returns-too-fast": {
    reason: "Torna su troppo in fretta e lancia la ruota o il pilota: chiudi il ritorno.",
    notice: "Resta calmo dopo gli atterraggi.",
    otherwise: damperWantsService("chiudere"),
  },
  "kicks-back-off-lips": {
    reason: "Lancia il pilota sulle rampe: restituisce troppo in fretta quello che la rampa ci ha messo.",
    notice: "Gli stacchi sono in piano, e la bici accompagna invece di superare.",
    otherwise: "Confronta anteriore e posteriore: se uno è molto più veloce dell’altro, la bici ruota in aria.",
  },
  "bounces-and-returns-fast": {
    reason: "Rimbalza sui sassi e torna su troppo in fretta: rallenta il ritorno prima di ammorbidire il colpo.",
    notice: "La ruota resta a terra dopo un sasso.",
    otherwise: "Poi apri la compressione alte velocità.",
  },
  "skips-under-braking": {
    reason: "Il posteriore saltella sulle buche di frenata: deve seguirle verso il basso con la stessa rapidità.",
    notice: "La ruota posteriore frena invece di saltellare.",
    otherwise: "Frena meno dietro, o prima; una ruota bloccata saltella con qualsiasi idraulica.",
  },
  "hangs-back": {
    reason:
      "Il posteriore s’impunta nelle buche e all’uscita dalle curve: torna su troppo tardi per tenere la velocità.",
    notice: "Tiene la velocità nello sconnesso.",
    otherwise: "Misura il sag: s’impunta anche un posteriore che sta troppo basso.",
  },
};
