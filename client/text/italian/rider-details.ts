/** Italian texts of what is known of a rider's body and stance. */
import type { riderDetails as english } from "../english/rider-details.ts";
import type { Said } from "../spoken.ts";

export const riderDetails: Said<typeof english> = {
  summary: (mass: string, share: string) => `Pilota: ${mass}, quota anteriore ${share}`,
  notMeasured: "non misurata",
  about:
    "La massa è con tutto quello che si indossa e si porta. Se è diversa da quella della base, la scheda assetto corregge le molle, così il sag resta.",
  mass: "Massa con attrezzatura",
  share: "Quota anteriore del peso",
  shareUnit: "su 1",
  shareAbout: (assumed: string) =>
    `La parte del peso che sta sulla ruota anteriore in posizione di guida. Lasciala vuota finché non è misurata: allora si assume ${assumed}.`,
  style: "Come guida adesso il pilota",
  styles: { calm: "tranquillo", usual: "come al solito", hard: "aggressivo" },
  styleAbout: "Se è diverso da quello di una base, la scheda assetto dice che cosa cambia. Nel dubbio lascialo vuoto.",
  save: "Salva il pilota",
  saved: (name: string, mass: string, share: string) => `Salvato: ${name}, ${mass}, quota anteriore ${share}`,
  needsMass: "Massa con attrezzatura: inserisci la massa.",
  disputed: "Qui due persone hanno inserito valori diversi. Vale quello che salvi.",
  changedMeanwhile: "Qualcun altro l’ha cambiato mentre qui era aperto. Salva di nuovo per sostituirlo con il tuo.",
  ofRider: "I dati del pilota: due persone hanno inserito valori diversi",
};
