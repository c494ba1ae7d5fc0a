/**
 * German texts that all workplaces share.
 *
 * Glossary, one word a thing, as mechanics and riders say it; the reader is "du":
 * baseline Basis-Setup · setup sheet Setup-Blatt · setting Einstellung · adjuster Einstellpunkt · adjustment Anpassung ·
 * changelog Protokoll · course Strecke · ground Boden · conditions Bedingungen · session Session · run Lauf ·
 * bench Werkbank · dispute Widerspruch, in dispute strittig · reported gemeldet · entry Eintrag ·
 * hand over übergeben, take in einlesen · fork Gabel · shock Dämpfer · damper Dämpfung · spring rate Federrate ·
 * preload Vorspannung · rebound Zugstufe · compression Druckstufe · volume spacer Volumenspacer · click Klick ·
 * sag Sag · travel Federweg · stroke Hub · bottom-out Durchschlag · grip Grip · berm Anlieger · lip Absprung ·
 * section of a course Abschnitt · job Aufgabe · cautions Sicherheitshinweise · complaint Klage · session sheet Session-Blatt ·
 * main chamber Hauptkammer · secondary chamber Zweitkammer · turn Drehung · plate Startnummer · team mate Teamkollege · felt step spürbarer Schritt.
 */
import type { common as model } from "../english/common.ts";
import type { Said } from "../spoken.ts";
import { entriesText } from "./plural.ts";

export const common: Said<typeof model> = {
  name: "Pitslate",
  loading: "Lese, was auf diesem Gerät ist …",
  loadingScreen: "Öffne die Seite …",
  notLoaded:
    "Diese Seite ließ sich nicht vom Server laden. Was auf diesem Gerät ist, ist sicher. Versuch es wieder, sobald der Server erreichbar ist.",
  fault:
    "Diese Seite hat einen Fehler und kann nicht weiter. Was gespeichert war, ist sicher. Öffne sie neu oder geh zurück zum Start.",
  again: "Nochmal versuchen",
  toStart: "Zum Start",
  back: "Zurück",
  find: "Suchen",
  language: "Sprache",
  units: {
    title: "Einheiten",
    hint: "Was du liest und eintippst, steht auf diesem Gerät in diesen Einheiten. Ohne Wahl bleibt ein Wert in der Einheit, in der er eingetippt wurde.",
    of: { pressure: "Druck", mass: "Gewicht", temperature: "Temperatur" },
  },
  save: "Speichern",
  cancel: "Abbrechen",
  close: "Schließen",
  undo: "Rückgängig",
  more: "Einen Schritt mehr",
  less: "Einen Schritt weniger",
  notKnown: "unbekannt",
  caution: "Vorsicht.",
  theme: { sun: "Sonne", dark: "Dunkel", switchTo: (name: string) => `Ansicht wechseln: ${name}` },
  update: {
    waiting: "Eine neuere Version von Pitslate ist da. Schreib erst fertig, was du gerade eintippst.",
    take: "Jetzt verwenden",
  },
  whoAreYou: {
    title: "Wer bist du?",
    hint: "Was du einträgst, trägt deinen Namen. Du kannst das jederzeit ändern.",
    none: "Noch kein Team auf diesem Gerät. Es kommt vom Laptop in der Box, sobald der erreichbar ist.",
    change: "Wechseln",
    holder: (name: string) => `${name} hat dieses Gerät`,
  },
  roles: { mechanic: "Mechaniker", rider: "Fahrer", manager: "Teamleitung" },
  workplaces: { mechanic: "Box", rider: "An der Strecke", manager: "Auswertung" },
  courseTypes: { steep: "steil", jumpy: "sprunglastig", wet: "nass" },
  grounds: { "dry dust": "trockener Staub", dry: "trocken", damp: "feucht", wet: "nass", mud: "Schlamm" },
  places: {
    fork: "Gabel",
    shock: "Dämpfer",
    "front-tyre": "Vorderreifen",
    "rear-tyre": "Hinterreifen",
  },
  adjusters: {
    "main-pressure": "Hauptkammerdruck",
    "secondary-pressure": "Zweitkammerdruck",
    "volume-spacers": "Volumenspacer",
    "spring-rate": "Federrate",
    preload: "Vorspannung",
    rebound: "Zugstufe",
    "low-speed-compression": "Low-Speed-Druckstufe",
    "high-speed-compression": "High-Speed-Druckstufe",
    "tyre-pressure": "Druck",
  },
  counts: {
    clicks: (value: number) => (Math.abs(value) === 1 ? "Klick" : "Klicks"),
    turns: (value: number) => (Math.abs(value) === 1 ? "Drehung" : "Drehungen"),
    spacers: () => "Spacer",
  },
  stepper: {
    allowed: (minimum: string, maximum: string) => `${minimum} bis ${maximum}`,
    outside: (label: string, value: string, allowed: string) =>
      `${label}: ${value} liegt nicht im Bereich von ${allowed}.`,
    noNumber: (label: string, typed: string, allowed: string) =>
      `${label}: „${typed}“ ist keine Zahl. Möglich: ${allowed}.`,
  },
  adjusterAt: (place: string, adjuster: string) => `${place}, ${adjuster}`,
  status: {
    loading: "Lese, was auf diesem Gerät ist",
    onServer: "Auf dem Server",
    onThisDevice: (waiting: number) =>
      waiting === 0
        ? "Auf diesem Gerät. Frage den Server, was er hat"
        : `Nur auf diesem Gerät: ${entriesText(waiting)} noch nicht auf dem Server`,
    offline: (since: string, waiting: number) =>
      waiting === 0
        ? `Offline seit ${since}. Alles von dir ist auf dem Server`
        : `Offline seit ${since}. ${entriesText(waiting)} nur auf diesem Gerät`,
    saving: "Speichere auf diesem Gerät",
    notSaved: (waiting: number) =>
      waiting === 0
        ? "Nicht auf diesem Gerät gespeichert, aber auf dem Server"
        : `Nicht auf diesem Gerät gespeichert: Lass diese Seite offen. ${entriesText(waiting)} bisher nirgends sonst`,
    unreadable: (count: number) => `Von dieser Version nicht lesbar: ${entriesText(count)}`,
  },
  holding: {
    // Follows "bei": dative.
    unnamed: (count: number) => (count === 1 ? "1 Gerät ohne Namen" : `${count} Geräten ohne Namen`),
    sentence: (where: { here: boolean; server: boolean; with: string | undefined }) => {
      const own = where.here ? "" : "Nicht auf diesem Gerät gespeichert. ";
      if (where.server)
        return `${own}Auf dem Server${where.with ? ` und bei ${where.with}` : "; noch auf keinem anderen Gerät"}.`;
      return where.with
        ? `${own}Noch nicht auf dem Server; bei ${where.with}.`
        : `${own}${where.here ? "Nur auf diesem Gerät." : "Bisher nirgends sonst."}`;
    },
  },
};
