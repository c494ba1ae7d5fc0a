/** French texts about how safe what is on this device is. */
import type { thisDevice as english } from "../english/this-device.ts";
import type { Said } from "../spoken.ts";

export const thisDevice: Said<typeof english> = {
  title: "Cet appareil",
  promise: {
    "not asked":
      "Le navigateur n’a pas encore promis de garder ce qui est sur cet appareil. On le lui demande à ta première saisie.",
    granted: "Le navigateur a promis de garder ce qui est sur cet appareil, même quand la place manque.",
    "not granted":
      "Le navigateur n’a pas promis de garder ce qui est sur cet appareil. Il peut l’effacer quand la place manque ; sur iPhone et iPad, il l’efface après 7 jours sans ouvrir Pitslate.",
    "not offered":
      "Ce navigateur ne promet pas de garder ce qui est sur cet appareil : l’adresse commence par http://, ou la fenêtre est privée, ou le navigateur est ancien. Il peut l’effacer quand la place manque, après 7 jours sans ouvrir Pitslate sur iPhone et iPad, et quand on ferme une fenêtre privée.",
  },
  install:
    "Mets Pitslate sur l’écran d’accueil, par le menu du navigateur ou, sur iPhone et iPad, par Partager. Il y démarre vide et reçoit l’équipe de l’ordinateur du stand.",
  save: "En fin de journée, enregistre tout dans un fichier : Transmettre sans réseau.",
  short: (used: string, left: string) =>
    `La place manque sur cet appareil : il reste environ ${left} Mo, et Pitslate en utilise ${used}. Fais de la place avant la journée, sinon des saisies risquent de ne pas être enregistrées ici.`,
};
