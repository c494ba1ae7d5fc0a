/** German texts of the hand-off without a network. */
import type { handOff as model } from "../english/hand-off.ts";
import type { Said } from "../spoken.ts";
import { entriesDative, entriesText, plural } from "./plural.ts";

export const handOff: Said<typeof model> = {
  link: "Übergeben ohne Netz",
  title: "Übergeben ohne Netz",
  hint: "Mit Codes: Ein Gerät zeigt sie auf dem Bildschirm, das andere liest sie mit der Kamera. Als Datei: Ein Gerät speichert sie, das andere liest sie ein, per Kabel, USB-Stick oder womit die beiden Handys sonst Dateien austauschen. Nichts wird überschrieben: Was zwei Leute getrennt eingestellt haben, erscheint als strittig.",
  codesNotLoaded: "Das Übergeben mit Codes ließ sich nicht vom Server laden. Übergib stattdessen als Datei.",
  back: "Zurück",
  save: {
    title: "Von diesem Gerät",
    action: "Alles in eine Datei speichern",
    byCodes: "Mit Codes übergeben",
    share: "Datei weitergeben",
    busy: "Erstelle die Datei …",
    done: (name: string, entries: number) => `${name} ist fertig, mit ${entriesDative(entries)}.`,
    incomplete: "Ältere Dokumente dieses Geräts ließen sich nicht lesen oder hatten keinen Platz und sind nicht darin.",
    where: "Sie liegt da, wo dieser Browser Downloads ablegt.",
    holds: "In der Datei",
    whoFirst: "Sag erst, wer dieses Gerät hat. Erst dann sind die Einträge der Fahrer offen.",
    who: "Wer bist du?",
    team: "Team, Bikes, Basis-Setups und Wochenenden",
    document: (name: string, entries: number) => `${name}: ${entriesText(entries)}`,
    rider: (name: string, year: number) => `${name}, ${year}`,
    notShared: "Die Datei wurde nicht weitergegeben. Du kannst sie weiterhin hier speichern.",
  },
  takeIn: {
    title: "Auf dieses Gerät",
    action: "Datei einlesen",
    byCodes: "Mit Codes einlesen",
    ending: (ending: string) => `Eine Datei, deren Name auf ${ending} endet`,
    reading: "Lese die Datei …",
    unreadable: "Dieses Gerät konnte die Datei nicht öffnen. Wähl sie noch einmal.",
    madeBy: (moment: string, name: string | undefined) =>
      name === undefined ? `Erstellt ${moment}` : `Erstellt von ${name}, ${moment}`,
    holds: (entries: number) => `${entriesText(entries)} darin`,
    fresh: (entries: number) => `${entriesText(entries)} neu hier`,
    whose: (name: string, entries: number) => `${name}: ${entriesText(entries)}`,
    span: (first: string, last: string) =>
      first === last ? `Eingetragen ${first}` : `Eingetragen ${first} bis ${last}`,
    nothingNew: "Nichts ist neu: Dieses Gerät hat alles, was darin ist.",
    merge: "Zusammenführen",
    leave: "Verwerfen",
    merging: "Führe zusammen …",
    merged: (entries: number) =>
      `Zusammengeführt: ${plural(entries, "neuer Eintrag ist", "neue Einträge sind")} auf diesem Gerät.`,
    notSaved: (entries: number) =>
      `Zusammengeführt: ${entriesText(entries)} neu, aber noch nicht auf diesem Gerät gespeichert. Lass diese Seite offen.`,
    onward: "Zum Server geht es weiter, sobald er erreichbar ist.",
  },
};
