/** French texts of a setup that was sent back instead of approved. */
import type { sentBack as english } from "../english/sent-back.ts";
import type { Said } from "../spoken.ts";

export const sentBack: Said<typeof english> = {
  open: "Renvoyer avec une note",
  note: "Ce qu’il faut faire avant d’en faire la base",
  send: "Renvoyer",
  needsNote: "Écris ce qu’il faut faire : le mécano le voit à l’établi du pilote.",
  sent: (type: string) => `Renvoyé : ce n’est pas la base piste ${type}. Le mécano voit la note à l’établi du pilote.`,
  already: "C’était déjà renvoyé avec cette note : rien à écrire.",
  undoSendBack: "Annuler : retirer la note",
  undoneSendBack: "Annulé : la note a été retirée.",
  title: (type: string) => `Renvoyé : pas encore la base piste ${type}`,
  by: (who: string, moment: string) => `${who}, ${moment}`,
  until:
    "La note disparaît quand quelque chose change sur le vélo, quand un nouveau sag est mesuré, ou quand les réglages sont validés.",
  ofDispute: (type: string) =>
    `Deux managers ont renvoyé les réglages piste ${type} avec des notes différentes. Les deux s’affichent jusqu’à ce qu’un manager réponde à nouveau.`,
};
