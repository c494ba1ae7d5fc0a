/** Italian texts about how safe what is on this device is. */
import type { thisDevice as english } from "../english/this-device.ts";
import type { Said } from "../spoken.ts";

export const thisDevice: Said<typeof english> = {
  title: "Questo dispositivo",
  promise: {
    "not asked":
      "Il browser non ha ancora promesso di conservare quello che è su questo dispositivo. Glielo si chiede con la tua prima voce.",
    granted: "Il browser ha promesso di conservare quello che è su questo dispositivo, anche quando lo spazio è poco.",
    "not granted":
      "Il browser non ha promesso di conservare quello che è su questo dispositivo. Può cancellarlo quando lo spazio è poco; su iPhone e iPad lo fa dopo 7 giorni senza aprire Pitslate.",
    "not offered":
      "Questo browser non promette di conservare quello che è su questo dispositivo: l’indirizzo comincia con http://, o la finestra è privata, o il browser è vecchio. Può cancellarlo quando lo spazio è poco, dopo 7 giorni senza aprire Pitslate su iPhone e iPad, e quando si chiude una finestra privata.",
  },
  install:
    "Metti Pitslate nella schermata Home, dal menu del browser o, su iPhone e iPad, da Condividi. Lì comincia vuoto e riceve il team dal computer del box.",
  save: "A fine giornata salva tutto in un file: Passa i dati senza rete.",
  short: (used: string, left: string) =>
    `Su questo dispositivo lo spazio è poco: restano circa ${left} MB, e Pitslate ne usa ${used}. Fai posto prima che cominci la giornata, altrimenti qui le voci forse non si salvano.`,
};
