/** German texts of the hand-off by codes. */
import type { handOffCodes as model } from "../english/hand-off-codes.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const handOffCodes: Said<typeof model> = {
  send: {
    title: "Mit Codes übergeben",
    readFirst: "1. Lies, was das andere Gerät hat",
    how: "Wähl auf dem anderen Gerät „Mit Codes einlesen“. Es zeigt einen Code: Halt die Kamera dieses Geräts darauf.",
    showNext: "2. Lass das andere Gerät das lesen",
    answer: (entries: number) =>
      `${entries === 1 ? "1 Eintrag ist" : `${entries} Einträge sind`} neu für das andere Gerät.`,
    again: "Anderes Gerät lesen",
    everything: "Alles zeigen",
    everythingHow: "Hat dieses Gerät keine Kamera, kann es alles zeigen, was es hat; das braucht mehr Codes.",
    everythingShown: "Alles, was auf diesem Gerät ist. Manches davon hat das andere Gerät vielleicht schon.",
  },
  receive: {
    title: "Mit Codes einlesen",
    showFirst: "1. Lass das andere Gerät das lesen",
    how: "Wähl auf dem anderen Gerät „Mit Codes übergeben“ und lass seine Kamera diesen Code lesen.",
    nobody: "Noch hat niemand gesagt, wer dieses Gerät hat. Die Einträge der Fahrer kommen erst danach.",
    readNext: "2. Lies die Antwort",
    readHow: "Das andere Gerät zeigt seine Antwort: Halt die Kamera dieses Geräts darauf.",
    next: "Es hat ihn gelesen: Antwort lesen",
    back: "Code noch einmal zeigen",
    onward: "Jetzt anders herum",
  },
  preparing: "Erstelle den Code …",
  code: {
    one: "Code mit allem",
    name: (number: number) => `Code ${number}`,
    several: (needed: number, duration: string) =>
      `Es braucht etwa ${needed} Codes, ${duration}. Welche davon gelesen oder verpasst werden, ist egal.`,
    pause: "Anhalten",
    play: "Weiter",
    next: "Nächster Code",
    seconds: (seconds: number) => `mindestens ${plural(seconds, "Sekunde", "Sekunden")}`,
    minutes: (minutes: number) => `mindestens ${plural(minutes, "Minute", "Minuten")}`,
  },
  camera: {
    start: "Mit der Kamera lesen",
    stop: "Kamera ausschalten",
    starting: "Starte die Kamera …",
    view: "Was die Kamera sieht",
    looking: "Noch kein Code zu sehen. Halt den Code still, sodass er fast das ganze Bild füllt.",
    progress: (read: number, needed: number) => `${read} von etwa ${needed} Codes gelesen`,
    insecure:
      "Ein Browser gibt die Kamera nur Seiten, die über https oder von diesem Gerät selbst kommen. Das ist hier nicht so, also übergib als Datei.",
    none: "Dieses Gerät hat keine Kamera, die der Browser nutzen kann. Übergib stattdessen als Datei.",
    refused:
      "Die Kamera wurde nicht erlaubt. Erlaub sie dieser Seite in den Einstellungen des Browsers, oder übergib als Datei.",
    failed:
      "Die Kamera startet nicht; vielleicht nutzt sie ein anderes Programm. Versuch es noch einmal, oder übergib als Datei.",
    noReader: "Der Code-Leser ließ sich nicht laden. Versuch es noch einmal, oder übergib als Datei.",
  },
};
