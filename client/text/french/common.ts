/**
 * French texts that all workplaces share. Words of the trade, one word a thing, in all parts:
 *
 * - adjuster, setting, setup: réglage, réglage, réglages (the setup sheet: fiche de réglages)
 * - baseline: base (f.), of a kind of course: base piste raide; to approve, to send back: valider, renvoyer
 * - course (the track): piste (f.), so its types are feminine: raide, à sauts, mouillée; ground: sol (m.)
 * - pit, bench: stand, établi; session: séance; practice, qualifying, race: essais, qualification, finale
 * - run: run; rider, mechanic, manager: pilote, mécano, manager; team: équipe; plate: plaque; venue: site
 * - fork, shock, tyre, rim: fourche, amortisseur, pneu, jante
 * - main, secondary pressure, volume spacer: pression principale, pression secondaire, cale de volume
 * - spring rate, preload, collar: raideur, précontrainte, bague; chamber: chambre
 * - rebound, low-speed and high-speed compression: détente, compression basse vitesse, compression haute vitesse
 * - travel (of the wheel), stroke (of a part): débattement, course; sag: sag; to bottom out: talonner, talonnage
 * - open, closed, click: ouvert, fermé, clic
 * - feedback: ressenti; return (of a part): retour; changelog: journal; reason: raison; limit: limite
 * - in dispute: en désaccord; to settle: trancher; to confirm: confirmer
 * - service, due, overdue: révision, à faire, dépassée; bath oil: huile de graissage
 * - job: tâche; complaint: plainte; weekend report: rapport du week-end; section: secteur; profile: profil; drop: dénivelé
 * - cautions: mises en garde; rain lock: verrou pluie; a bike is ridden: utilisé; aside: de côté; leverage ratio: ratio
 * - entry: saisie; device: appareil; server: serveur; hand over, take in: transmettre, recevoir; from a file: importer
 */
import type { common as english } from "../english/common.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";

export const common: Said<typeof english> = {
  name: "Pitslate",
  loading: "Lecture de la copie de cet appareil…",
  loadingScreen: "Ouverture de l’écran…",
  notLoaded:
    "Impossible de charger cet écran depuis le serveur. Ce qui est sur cet appareil est en sécurité. Réessaie quand le serveur est joignable.",
  fault:
    "Cet écran a un défaut et ne peut pas continuer. Ce qui a été enregistré est en sécurité. Rouvre-le, ou reviens au début.",
  again: "Réessayer",
  toStart: "Au début",
  back: "Retour",
  language: "Langue",
  find: "Chercher",
  units: {
    title: "Unités",
    hint: "Ce que tu lis et écris est dans ces unités, sur cet appareil. Sans choix, une valeur garde l’unité dans laquelle elle a été écrite.",
    of: { pressure: "Pression", mass: "Masse", temperature: "Température" },
  },
  save: "Enregistrer",
  cancel: "Abandonner",
  close: "Fermer",
  undo: "Annuler",
  more: "Un pas de plus",
  less: "Un pas de moins",
  notKnown: "inconnu",
  theme: { sun: "Soleil", dark: "Sombre", switchTo: (name: string) => `Passer à l’écran ${name.toLowerCase()}` },
  update: {
    waiting: "Une nouvelle version de Pitslate est prête. Termine d’abord ce que tu écris.",
    take: "L’utiliser",
  },
  whoAreYou: {
    title: "Qui es-tu ?",
    hint: "Ce que tu écris porte ton nom. Tu peux en changer à tout moment.",
    none: "Pas encore d’équipe sur cet appareil. Elle arrive de l’ordinateur du stand dès qu’il est joignable.",
    change: "Changer",
    holder: (name: string) => `Cet appareil est entre les mains de ${name}`,
  },
  roles: { mechanic: "Mécano", rider: "Pilote", manager: "Manager" },
  workplaces: { mechanic: "Stand", rider: "Bord de piste", manager: "Bilan" },
  courseTypes: { steep: "raide", jumpy: "à sauts", wet: "mouillée" },
  grounds: { "dry dust": "sec et poussiéreux", dry: "sec", damp: "humide", wet: "mouillé", mud: "boueux" },
  places: {
    fork: "Fourche",
    shock: "Amortisseur",
    "front-tyre": "Pneu avant",
    "rear-tyre": "Pneu arrière",
  },
  adjusters: {
    "main-pressure": "Pression principale",
    "secondary-pressure": "Pression secondaire",
    "volume-spacers": "Cales de volume",
    "spring-rate": "Raideur du ressort",
    preload: "Précontrainte",
    rebound: "Détente",
    "low-speed-compression": "Compression basse vitesse",
    "high-speed-compression": "Compression haute vitesse",
    "tyre-pressure": "Pression",
  },
  adjusterAt: (place: string, adjuster: string) => `${place}, ${adjuster.toLowerCase()}`,
  caution: "Attention.",
  counts: {
    clicks: (value: number) => chosen(value, "clic", "clics"),
    turns: (value: number) => chosen(value, "tour", "tours"),
    spacers: (value: number) => chosen(value, "cale", "cales"),
  },
  stepper: {
    allowed: (minimum: string, maximum: string) => `de ${minimum} à ${maximum}`,
    outside: (label: string, value: string, allowed: string) =>
      `${label} : ${value} n’est pas dans la plage ${allowed}.`,
    noNumber: (label: string, typed: string, allowed: string) =>
      `${label} : « ${typed} » n’est pas un nombre. Permis : ${allowed}.`,
  },
  status: {
    loading: "Lecture de la copie de cet appareil",
    onServer: "Sur le serveur",
    onThisDevice: (waiting: number) =>
      waiting === 0
        ? "Sur cet appareil. Le serveur dit ce qu’il a…"
        : `Sur cet appareil seulement : ${entries(waiting)} pas encore sur le serveur`,
    offline: (since: string, waiting: number) =>
      waiting === 0
        ? `Hors ligne depuis ${since}. Tout ce qui est à toi est sur le serveur`
        : `Hors ligne depuis ${since}. ${entries(waiting)} sur cet appareil seulement`,
    saving: "Enregistrement sur cet appareil",
    notSaved: (waiting: number) =>
      waiting === 0
        ? "Pas enregistré sur cet appareil, mais sur le serveur"
        : `Pas enregistré sur cet appareil : garde cette page ouverte. ${entries(waiting)} nulle part ailleurs pour l’instant`,
    unreadable: (count: number) => `${entries(count)} que cette version ne sait pas lire`,
  },
  holding: {
    unnamed: (count: number) => plural(count, "appareil sans nom", "appareils sans nom"),
    sentence: (where: { here: boolean; server: boolean; with: string | undefined }) => {
      const own = where.here ? "" : "Pas enregistré sur cet appareil. ";
      if (where.server)
        return `${own}Sur le serveur${where.with ? `, et chez ${where.with}` : " ; sur aucun autre appareil pour l’instant"}.`;
      return where.with
        ? `${own}Pas encore sur le serveur ; chez ${where.with}.`
        : `${own}${where.here ? "Sur cet appareil seulement." : "Nulle part ailleurs pour l’instant."}`;
    },
  },
};

function entries(count: number): string {
  return plural(count, "saisie", "saisies");
}
