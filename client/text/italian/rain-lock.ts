/** Italian texts of the lock against rain. */
import type { rainLock as english } from "../english/rain-lock.ts";
import type { Said } from "../spoken.ts";

export const rainLock: Said<typeof english> = {
  lock: "Blocco pioggia",
  locked: "Bloccato contro la pioggia: solo valori, qui non si può cambiare niente.",
  open: "Tieni premuto per aprire",
  holding: "Continua a premere …",
  short: "Troppo breve: tieni premuto per un secondo.",
  confirm: "Questa pressione è arrivata senza un dito o un tasto. Per aprire lo schermo, confermala.",
  confirmed: "Apri lo schermo",
  toSet: "Da regolare, in quest’ordine",
  nothingToSet: "Dalla scheda non resta niente da regolare.",
  onTheBike: (place: string) => `Sulla bici: ${place.toLowerCase()}`,
  from: (value: string) => `prima ${value}`,
  fromUnknown: "prima ignoto",
};
