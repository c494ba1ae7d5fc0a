/** French texts of the service of a bike's parts, as the pit shows it. */
import type { service as english } from "../english/service.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const service: Said<typeof english> = {
  title: "Révision",
  works: {
    fork: { "bath oil": "Huile de graissage des fourreaux", complete: "Révision complète" },
    shock: { "bath oil": "Huile de graissage du corps d’air", complete: "Révision complète" },
  },
  states: { "in use": "En service", due: "À faire", overdue: "Dépassée" },
  hours: (used: string) => `${used} h`,
  limit: (limit: string) => `sur ${limit} h`,
  dueNext: "À faire dès le prochain run.",
  overNext: "Heures dépassées dès le prochain run.",
  untilDue: (left: string) => `Encore ${left} avant qu’elle soit à faire.`,
  untilLimit: (left: string) => `Encore ${left} avant la fin des heures.`,
  runs: (count: number) => plural(count, "run", "runs"),
  runsAndSessions: (runs: string, sessions: number) =>
    sessions === 0
      ? `${runs}, moins d’une séance comme celles de ce week-end,`
      : `${runs}, ou ${plural(sessions, "séance", "séances")} comme celles de ce week-end,`,
  over: "Les heures sont dépassées.",
  neverDone: "Aucune révision n’est notée : les heures comptent depuis le premier run.",
  lastDone: (what: string, who: string, when: string) => `Dernière : ${what}, ${who}, ${when}`,
  hoursBefore: (hours: string) => `Elle avait alors ${hours} h.`,
  onTheBikeThen: (count: number) => `Ce qui était alors sur le vélo : ${settingsText(count)}`,
  onTheBikeNow: (count: number) => `Noté avec, ce qui est sur le vélo maintenant : ${settingsText(count)}`,
  nothingOnTheBike: "Aucun réglage de ce vélo n’est connu : il n’y a rien à noter avec.",
  inDispute: (adjusters: string) => `En désaccord, donc pas noté : ${adjusters}. Regarde d’abord le vélo.`,
  setting: (adjuster: string, value: string) => `${adjuster} : ${value}`,
  done: (part: string) => `Révision faite : ${part.toLowerCase()}`,
  what: "Ce qui a été fait",
  completeHint: "Une révision complète comprend l’huile de graissage : les deux repartent de zéro.",
  before: "Heures roulées depuis",
  beforeHint: "Seulement pour une révision faite plus tôt. Laisse vide si elle vient d’être faite.",
  hoursUnit: "h",
  note: "Note, si tu veux",
  save: "Noter",
  needsWork: "Choisis ce qui a été fait.",
  saved: (part: string, work: string) => `Noté : ${part}, ${work.toLowerCase()}`,
  caution:
    "Une pièce dont la révision est dépassée ou qui est abîmée va chez un mécanicien qualifié : ne compense pas par les réglages. La notice du fabricant passe avant : si elle demande la révision plus tôt, elle est à faire plus tôt.",
  counting: "Comment les heures sont comptées",
  countingRuns: (minutes: string) =>
    `Chaque run de ce vélo compte avec son temps ; un run sans temps compte ${minutes} minutes.`,
  countingGround: (weights: string) =>
    `Une heure compte selon le sol : ${weights}. Un sol qui n’est pas saisi compte comme sec.`,
  weight: (ground: string, weight: string) => `${ground} ${weight} h`,
  countingLeft: (minutes: string) =>
    `Ce qui reste se compte en runs comme ceux de ce week-end ; avant le premier, en runs de ${minutes} minutes sur sol sec.`,
  countingDue: (percent: string) => `À faire à partir de ${percent} % des heures.`,
  countingSource: "Usage courant, là où le fabricant ne dit rien d’autre.",
};
