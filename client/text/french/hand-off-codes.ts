/** French texts of the hand-off by codes. */
import type { handOffCodes as english } from "../english/hand-off-codes.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";

export const handOffCodes: Said<typeof english> = {
  send: {
    title: "Transmettre par codes",
    readFirst: "1. Lis ce que l’autre appareil a déjà",
    how: "Sur l’autre appareil, choisis « Recevoir par codes ». Il montre un code : vise-le avec la caméra de cet appareil.",
    showNext: "2. Fais lire ceci à l’autre appareil",
    answer: (entries: number) =>
      `${plural(entries, "saisie est nouvelle", "saisies sont nouvelles")} pour l’autre appareil.`,
    again: "Lire un autre appareil",
    everything: "Tout montrer",
    everythingHow: "Si cet appareil n’a pas de caméra, il peut montrer tout ce qu’il a ; cela demande plus de codes.",
    everythingShown: "Tout ce qui est sur cet appareil. L’autre en a peut-être déjà une partie.",
  },
  receive: {
    title: "Recevoir par codes",
    showFirst: "1. Fais lire ceci à l’autre appareil",
    how: "Sur l’autre appareil, choisis « Transmettre par codes », et fais lire ce code à sa caméra.",
    nobody:
      "Personne n’a encore dit qui a cet appareil en main. Les saisies des pilotes arrivent une fois que c’est dit.",
    readNext: "2. Lis la réponse",
    readHow: "L’autre appareil montre sa réponse : vise-la avec la caméra de cet appareil.",
    next: "Il l’a lu : lire la réponse",
    back: "Remontrer le code",
    onward: "Maintenant dans l’autre sens",
  },
  preparing: "Création du code…",
  code: {
    one: "Code avec le tout",
    name: (number: number) => `Code ${number}`,
    several: (needed: number, duration: string) =>
      `Il faut environ ${plural(needed, "code", "codes")}, ${duration}. Peu importe lesquels sont lus ou manqués.`,
    pause: "Pause",
    play: "Reprendre",
    next: "Code suivant",
    seconds: (seconds: number) => `${plural(seconds, "seconde", "secondes")} ou plus`,
    minutes: (minutes: number) => `${plural(minutes, "minute", "minutes")} ou plus`,
  },
  camera: {
    start: "Lire avec la caméra",
    stop: "Arrêter la caméra",
    starting: "Démarrage de la caméra…",
    view: "Ce que voit la caméra",
    looking: "Pas encore de code en vue. Tiens le code immobile, de sorte qu’il remplisse presque toute l’image.",
    progress: (read: number, needed: number) => `${read} ${chosen(read, "code lu", "codes lus")} sur environ ${needed}`,
    insecure:
      "Un navigateur ne donne la caméra qu’aux pages venues par https ou de cette machine. Ce n’est pas le cas de cette page : transmets par fichier.",
    none: "Cet appareil n’a pas de caméra que le navigateur puisse utiliser. Transmets plutôt par fichier.",
    refused:
      "La caméra n’a pas été autorisée. Autorise-la pour cette page dans les réglages du navigateur, ou transmets par fichier.",
    failed: "La caméra ne démarre pas ; un autre programme l’utilise peut-être. Réessaie, ou transmets par fichier.",
    noReader: "Impossible de charger le lecteur de codes. Réessaie, ou transmets par fichier.",
  },
};
