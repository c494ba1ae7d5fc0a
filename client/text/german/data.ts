/** German texts of the data that goes out and comes in. */
import type { data as model } from "../english/data.ts";
import type { Said } from "../spoken.ts";
import { entriesText, plural } from "./plural.ts";

export const data: Said<typeof model> = {
  link: "Import und Export",
  title: "Import und Export",
  forWhom: "Daten holt und gibt nur, wer Mechaniker oder Teamleitung ist.",
  who: "Wer bist du?",
  back: { mechanic: "Zur Box", manager: "Zur Auswertung" },
  saved: (name: string) => `${name} ist fertig. Die Datei liegt da, wo dieser Browser Downloads ablegt.`,
  file: {
    tooLarge: (bytes: number, most: number) =>
      `Diese Datei hat ${megabytes(bytes)} MB; gelesen werden höchstens ${megabytes(most)} MB. Teil sie in mehrere Dateien auf.`,
    unreadable: "Dieses Gerät konnte die Datei nicht öffnen. Wähl sie noch einmal.",
    notText:
      "Diese Datei ist kein Text in UTF-8. Speichere sie als UTF-8 (Tabellenprogramme bieten das neben CSV an) und wähl sie noch einmal.",
    quotes: (line: number) =>
      `Zeile ${line}: Ein Anführungszeichen wird nicht so geschlossen, wie CSV es verlangt. Speichere die Tabelle noch einmal als CSV.`,
    noTable: "In dieser Datei ist keine Tabelle: Sie braucht eine Zeile mit den Spaltennamen und Zeilen darunter.",
    reading: "Lese die Datei …",
    writing: "Schreibe …",
    notLoaded:
      "Der Programmteil für Tabellen ließ sich nicht vom Server laden. Versuch es wieder, sobald der Server erreichbar ist.",
  },
  team: {
    title: "Alle Teamdaten",
    hint: "Eine JSON-Datei mit allem, was jetzt gilt: Leute, Bikes, Teile, Basis-Setups, Wochenenden, Einstellungen, Läufe. Auch andere können so eine Datei schreiben.",
    schema: "Der Aufbau der Datei (JSON-Schema)",
    save: "Alles als JSON speichern",
    take: "JSON-Datei einlesen",
  },
  tables: {
    title: "Tabellen für die Tabellenkalkulation",
    which: "Tabelle",
    names: {
      riders: "Fahrer",
      baselines: "Basis-Setups",
      settings: "Einstellungen an den Bikes",
      changelog: "Protokoll (nur Export)",
      runs: "Läufe (nur Export)",
    },
    form: "Schreibweise der Tabelle",
    forms: { point: "62.5, Komma zwischen den Zellen", comma: "62,5; Semikolon zwischen den Zellen" },
    save: "Als CSV speichern",
    take: "CSV-Datei einlesen",
    hint: "Fahrer, Basis-Setups oder Einstellungen: Die erste Zeile sagt, was es ist. Eingelesene Einstellungen gelten als jetzt am Bike, am hier gewählten Wochenende.",
    weekend: "Wochenende",
  },
  times: {
    title: "Laufzeiten",
    hint: "Aus der CSV-Datei einer Zeitmessung. Eine Zeit kommt zu dem Lauf des Fahrers, der noch keine hat, oder wird ein Lauf, von dem nur die Zeit bekannt ist. Was zu einem Lauf gesagt wurde, bleibt.",
    take: "Datei mit Zeiten wählen",
    weekend: "Wochenende",
    session: "Session",
    columns: "Welche Spalte was enthält",
    column: { plate: "Startnummer", name: "Name", time: "Zeit", session: "Session" },
    none: "keine Spalte",
    sessionHint: "Nennt keine Spalte die Session, gilt die oben gewählte.",
    unnamed: (number: number) => `Spalte ${number}`,
    needs: "Wähl die Spalte mit der Zeit und die mit der Startnummer oder dem Namen.",
    look: "Zeigen, was sich ändern würde",
    tooMany: (most: number) => `Diese Tabelle hat mehr als ${most} Zeilen; teil sie in mehrere Dateien auf.`,
  },
  preview: {
    title: (name: string) => `Was ${name} ändern würde`,
    counts: (fresh: number, changes: number, same: number, refused: number) =>
      `${fresh} neu, ${plural(changes, "Änderung", "Änderungen")}, ${same} gleich, ${refused} abgelehnt`,
    nothing: "Nichts würde sich ändern: Alles, was eingelesen werden kann, ist schon so.",
    refused: "Abgelehnt",
    changes: "Änderungen",
    fresh: "Neu",
    difference: (field: string, from: string | undefined, to: string | undefined) =>
      `${field}: ${from ?? "nichts"} → ${to ?? "nichts"}`,
    take: "Übernehmen",
    takeGood: (count: number) =>
      count === 1 ? "Den gültigen Eintrag übernehmen" : `Die ${count} gültigen Einträge übernehmen`,
    leave: "Verwerfen",
    more: (count: number) => `${count} weitere zeigen`,
    line: (place: string, sentence: string) => `${place}: ${sentence}`,
  },
  note: (name: string) => `Aus der Datei ${name}`,
  done: (count: number) => `Übernommen: ${entriesText(count)}.`,
  moved: "Während du geschaut hast, hat sich hier etwas geändert. Das würde die Datei jetzt ändern.",
  undo: "Ganze Datei rückgängig machen",
  undone: (count: number, kept: number) =>
    `Rückgängig gemacht: ${entriesText(count)}.${kept > 0 ? ` ${kept} seither erneut geändert, das bleibt.` : ""}`,
};

function megabytes(bytes: number): number {
  return Math.ceil(bytes / 1_000_000);
}
