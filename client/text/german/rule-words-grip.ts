import type { RuleWords } from "#core/advice/rule-words.ts";

const backToBaseline = "An beiden Enden zurück zum Basis-Setup und von dort neu beginnen.";

/** What the rules of grip and of the balance of the two ends say. */
export const gripWords: Readonly<Record<string, RuleWords>> = {
  "front-slides": {
    reason: "Die Front rutscht: Reifen und Gabel sollen dem Boden besser folgen.",
    notice: "Die Front hält in flachen Kurven die Linie.",
    otherwise: "Auf die Felge achten: Wo Steine sie treffen, mit dem Reifendruck nicht weiter herunter.",
  },
  "front-pushes-wide": {
    reason: "Die Front schiebt in Kurven nach außen: mehr Gewicht darauf, und in die Kurve hinein nachgeben lassen.",
    notice: "Die Front lenkt ein und bleibt drin.",
    otherwise: "Ein Heck, das zu tief steht, nimmt der Front das Gewicht: nach seinem Sag schauen.",
  },
  "rear-slides": {
    reason: "Das Heck rutscht: Reifen und Dämpfer sollen dem Boden besser folgen.",
    notice: "Das Heck folgt durch Kurven und beim Bremsen.",
    otherwise: "Die beiden Enden vergleichen: Ein Heck, das hoch und hart steht, hat weniger Last für Grip.",
  },
  "rear-steps-out": {
    reason: "Das Heck bricht in Kurven aus: Es soll sich hineinsetzen und seine Last behalten.",
    notice: "Das Heck bleibt in Kurven hinter der Front.",
    otherwise: "Nach der Front schauen: Taucht sie ab, hebt sie das Heck.",
  },
  "tyre-squirms": {
    reason: "Der Reifen knickt in Kurven weg: Die Karkasse braucht mehr Druck, bevor er greifen kann.",
    notice: "Kurven laufen auf dem Profil, und das Bike antwortet sofort.",
    otherwise: "Eine breitere Felge oder eine festere Karkasse hält den Reifen, wo Druck Grip kostet.",
  },
  "front-firmer-pushes-wide": {
    reason: "Die Front schiebt nach außen und ist gegenüber dem Heck härter als im Basis-Setup des Fahrers.",
    notice: "Die Front lenkt ein wie gewohnt.",
    otherwise: backToBaseline,
  },
  "front-softer-dives": {
    reason: "Die Front taucht ab und ist gegenüber dem Heck weicher als im Basis-Setup des Fahrers.",
    notice: "In steilen Teilen steht das Bike wieder eben.",
    otherwise: backToBaseline,
  },
  "rear-firmer-steps-out": {
    reason: "Das Heck bricht aus und ist gegenüber der Front härter als im Basis-Setup des Fahrers.",
    notice: "Das Heck folgt wie gewohnt.",
    otherwise: backToBaseline,
  },
  "unsure-and-softer": {
    reason: "Der Fahrer ist unsicher, und dieses Ende ist gegenüber dem anderen weicher als in seinem Basis-Setup.",
    notice: "Das Bike fühlt sich wieder eben und vertraut an.",
    otherwise: backToBaseline,
  },
  "unsure-and-firmer": {
    reason: "Der Fahrer ist unsicher, und dieses Ende ist gegenüber dem anderen härter als in seinem Basis-Setup.",
    notice: "Das Bike fühlt sich wieder eben und vertraut an.",
    otherwise: backToBaseline,
  },
};
