/** Spanish texts of a setup that was sent back instead of approved. */
import type { sentBack as model } from "../english/sent-back.ts";
import type { Said } from "../spoken.ts";

export const sentBack: Said<typeof model> = {
  open: "Devolverlo con una nota",
  note: "Qué hay que hacer para que pueda ser la base",
  send: "Devolverlo",
  needsNote: "Escribe qué hay que hacer: el mecánico lo ve en el banco del piloto.",
  sent: (type: string) => `Devuelto: no es la base para pista ${type}. El mecánico ve la nota en el banco del piloto.`,
  already: "Ya estaba devuelto con esta nota: no hacía falta apuntar nada.",
  undoSendBack: "Deshacer: retirar la nota",
  undoneSendBack: "Deshecho: la nota se ha retirado.",
  title: (type: string) => `Devuelto: todavía no es la base para pista ${type}`,
  by: (who: string, moment: string) => `${who}, ${moment}`,
  until: "La nota desaparece cuando se cambia algo en la bici, se mide un sag nuevo o se aprueba.",
  ofDispute: (type: string) =>
    `Dos mánagers han devuelto el reglaje para pista ${type} con notas distintas. Se ven las dos hasta que un mánager responda otra vez.`,
};
