/** French texts of the team's job queue, with which the pit opens. */
import type { jobQueue as english } from "../english/job-queue.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const jobQueue: Said<typeof english> = {
  title: "À faire ensuite",
  none: "Rien à faire : pour cette séance, chaque vélo est comme il doit être.",
  noneYet: "Rien à faire pour l’instant : les réglages attendent la piste et les conditions.",
  toRiders: "Aux pilotes",
  riders: "Pilotes",
  jobs: (count: number) => plural(count, "tâche", "tâches"),
  team: "L’équipe",
  caution:
    "Le gaz est sous pression, les ressorts sont sous charge : reste sous le maximum marqué sur la pièce. Les mises en garde de chaque étape sont à l’établi. Le premier run après un changement est lent et court.",
  sessions: {
    title: "Séances",
    startsIn: (time: string) => `commence dans ${time}`,
    running: "en cours",
    over: "finie",
    allOver: "Toutes les séances de ce week-end sont finies.",
  },
  kinds: {
    "dispute to check": "Désaccord à vérifier au vélo",
    "reported change to confirm": "Changement signalé à confirmer",
    "service overdue": "Révision dépassée",
    "feedback to decide on": "Ressenti à traiter",
    "change to make": "Changement à faire",
    "pressure check": "Pression à contrôler, autre température",
    "feedback missing": "Ressenti manquant",
    "service due": "Révision à faire",
  },
  until: (session: string) => `Avant ${session},`,
  noneLeft: "Plus de séance pour laquelle le faire",
  steps: (count: number) => (count < 2 ? `${count} étape` : `${count} étapes, dans cet ordre`),
  step: (adjuster: string, from: string | undefined, to: string) =>
    from === undefined ? `${adjuster} : ${to}` : `${adjuster} : ${from} → ${to}`,
  valueOf: (name: string, value: string) => `${name} : ${value}`,
  atBench: "À l’établi",
  doneNow: (what: string) => `Fait : ${what}`,
  undo: "Annuler",
  undone: (rider: string, kind: string) => `Annulé : ${kind}, ${rider}`,
  changedSince: "Changé depuis ; l’état actuel est à l’établi.",
  change: {
    what: (count: number) => `${settingsText(count)} à faire`,
    why: (session: string) => `Le vélo n’est pas comme le demandent piste, sol et température de la séance ${session}.`,
    blocked: "Aucun ordre sûr ne mène au tout : regarde à l’établi.",
    touch: "Tout est sur le vélo",
    said: (count: number) => `${settingsText(count)} sur le vélo`,
  },
  pressure: {
    what: (count: number) => plural(count, "pression à contrôler", "pressions à contrôler"),
    why: (session: string, air: string, bench: string) =>
      `Réglé à une autre température. Séance ${session} : air ${air}, à l’établi ${bench}.`,
    touch: "C’est ce qu’on lit",
    said: (count: number) => plural(count, "pression réglée", "pressions réglées"),
    note: (session: string) => `La même pression, à la température de la séance ${session}.`,
  },
  reported: {
    why: (who: string, when: string) => `${who} l’a dit le ${when} ; aucun mécano ne l’a vu.`,
    touch: (value: string) => `Vu : ${value}`,
    said: (adjuster: string, value: string) => `${adjuster} ${value}, confirmé`,
  },
  decide: {
    why: (run: string, cause: string) => `${run}. ${cause}.`,
    of: (run: string) => `${run}.`,
    lookFirst: "Il y a d’abord quelque chose à regarder ou à demander.",
    noAdvice: "Aucune règle des conseils ne répond à ce run.",
    noSetup: "Pas de conseil avant que piste et conditions soient saisies.",
    put: (value: string) => `Sur le vélo : ${value}`,
    putSaid: (adjuster: string, value: string) => `${adjuster} ${value} sur le vélo`,
    leave: "Laisser tel quel",
    leftSaid: "laissé tel quel",
    read: "Lire et décider",
  },
  missing: {
    what: (sessions: string) => `Aucun run noté : ${sessions}`,
    why: (count: number) =>
      count === 1 ? "La séance est finie. Demande le run." : "Les séances sont finies. Demande les runs.",
    reasons: { "nothing to report": "Rien à signaler", "did not ride": "N’a pas roulé" },
    look: "Voir le ressenti",
  },
  dispute: {
    look: "Regarde le vélo avant de dire qui a raison.",
    why: "Deux personnes ne disent pas la même chose.",
    claim: (value: string, who: string) => `C’est ${value}, comme le dit ${who}`,
    claimAfterAll: (value: string) => `Finalement, c’est ${value}`,
    go: "Regarder et trancher",
  },
  service: {
    used: (used: string, limit: string, left: string) => `${used} ${limit}. ${left}`,
    touch: "Révision faite : noter",
    said: (part: string, work: string) => `${part}, ${work.toLowerCase()}, noté maintenant`,
  },
};
