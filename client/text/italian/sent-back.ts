/** Italian texts of a setup that was sent back instead of approved. */
import type { sentBack as english } from "../english/sent-back.ts";
import type { Said } from "../spoken.ts";

export const sentBack: Said<typeof english> = {
  open: "Rimanda con una nota",
  note: "Che cosa va fatto prima che possa diventare la base",
  send: "Rimanda",
  needsNote: "Scrivi che cosa va fatto: il meccanico lo vede al banco del pilota.",
  sent: (type: string) => `Rimandato: non è la base per pista ${type}. Il meccanico vede la nota al banco del pilota.`,
  already: "Era già stato rimandato con questa nota: non c’era niente da scrivere.",
  undoSendBack: "Annulla: ritira la nota",
  undoneSendBack: "Annullato: la nota è stata ritirata.",
  title: (type: string) => `Rimandato: non ancora la base per pista ${type}`,
  by: (who: string, moment: string) => `${who}, ${moment}`,
  until:
    "La nota sparisce quando si cambia qualcosa sulla bici, quando si misura un nuovo sag o quando viene approvato.",
  ofDispute: (type: string) =>
    `Due team manager hanno rimandato l’assetto per pista ${type} con note diverse. Si vedono entrambe finché un team manager non risponde di nuovo.`,
};
