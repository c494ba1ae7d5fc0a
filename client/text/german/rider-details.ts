/** German texts of what is known of a rider's body and stance. */
import type { riderDetails as model } from "../english/rider-details.ts";
import type { Said } from "../spoken.ts";

export const riderDetails: Said<typeof model> = {
  summary: (mass: string, share: string) => `Fahrer: ${mass}, Anteil vorne ${share}`,
  notMeasured: "nicht gemessen",
  about:
    "Das Gewicht gilt mit allem, was am Körper ist. Ist es anders als beim Basis-Setup, passt das Setup-Blatt die Federn an, damit der Sag bleibt.",
  mass: "Gewicht mit Ausrüstung",
  share: "Gewichtsanteil vorne",
  shareUnit: "von 1",
  shareAbout: (assumed: string) =>
    `Der Teil des Gewichts, den in Fahrposition das Vorderrad trägt. Lass das leer, solange es nicht gemessen ist: Dann gilt ${assumed} als Annahme.`,
  style: "Wie der Fahrer gerade fährt",
  styles: { calm: "ruhig", usual: "wie immer", hard: "hart" },
  styleAbout:
    "Ist es anders als bei einem Basis-Setup, sagt das Setup-Blatt, was sich dadurch ändert. Im Zweifel offen lassen.",
  save: "Fahrer speichern",
  saved: (name: string, mass: string, share: string) => `Gespeichert: ${name}, ${mass}, Anteil vorne ${share}`,
  needsMass: "Gewicht mit Ausrüstung: Trag das Gewicht ein.",
  disputed: "Zwei haben hier verschiedene Werte eingetragen. Was du speicherst, gilt.",
  changedMeanwhile:
    "Jemand anderes hat das geändert, während es hier offen war. Speichere noch einmal, um es durch deins zu ersetzen.",
  ofRider: "Die Angaben zum Fahrer: Zwei haben verschiedene Werte eingetragen",
};
