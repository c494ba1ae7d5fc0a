/** Spanish texts of the lock against rain. */
import type { rainLock as model } from "../english/rain-lock.ts";
import type { Said } from "../spoken.ts";

export const rainLock: Said<typeof model> = {
  lock: "Bloqueo de lluvia",
  locked: "Bloqueado contra la lluvia: solo se ven los valores, aquí no se puede cambiar nada.",
  open: "Mantén pulsado para abrir",
  holding: "Sigue pulsando…",
  short: "Muy corto: mantenlo pulsado un segundo.",
  confirm: "Esta pulsación ha llegado sin dedo ni tecla. Para abrir la pantalla, confírmalo.",
  confirmed: "Abrir la pantalla",
  toSet: "Por poner, en este orden",
  nothingToSet: "No queda nada por poner de la hoja.",
  onTheBike: (place: string) => `En la bici: ${place.toLowerCase()}`,
  from: (value: string) => `desde ${value}`,
  fromUnknown: "antes no se sabía",
};
