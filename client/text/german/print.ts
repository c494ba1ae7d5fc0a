/** German texts of the pages that are printed, and of the screens that show them before. */
import type { print as model } from "../english/print.ts";
import type { Said } from "../spoken.ts";
import { entriesDative } from "./plural.ts";

const cautionsTitle = "Bevor du ans Bike gehst";

export const print: Said<typeof model> = {
  links: { sheet: "Setup-Blatt drucken", team: "Session-Blatt drucken", report: "Wochenendbericht" },
  who: "Wer bist du?",
  forWhom: "Sag erst, wer du bist: Auf der Seite steht, wer sie gedruckt hat.",
  forTeam: "Auf dieser Seite stehen alle Fahrer: Ein Mechaniker oder die Teamleitung druckt sie.",
  noWeekend: "Noch kein Rennwochenende auf diesem Gerät.",
  weekend: "Wochenende",
  session: "Session",
  paper: "Papier",
  print: "Drucken",
  hint: "Lass die Skalierung im Druckfenster des Browsers bei 100 %. Alles ist schwarz auf weiß; Hintergründe braucht es nicht.",
  preview: "Die Seite, wie sie gedruckt wird",
  back: { pit: "Zurück zum Team", rider: "Zurück zum Fahrer", review: "Zurück zur Auswertung" },
  sheetTitle: "Setup-Blatt",
  teamTitle: "Session-Blatt",
  plate: (plate: number) => `Nr. ${plate}`,
  mass: (mass: string) => `Fahrer ${mass}`,
  sessionAt: (session: string, start: string) => `${session}, ${start}`,
  course: (steep: string, jumpy: string, wet: string, altitude: string) =>
    `Steil ${steep}, sprunglastig ${jumpy}, nass ${wet}, auf ${altitude}`,
  conditions: (air: string, bench: string | undefined, ground: string) =>
    bench === undefined ? `Luft ${air}, Boden: ${ground}` : `Luft ${air}, an der Werkbank ${bench}, Boden: ${ground}`,
  printed: (moment: string, who: string) => `Gedruckt ${moment} von ${who}.`,
  state: (moment: string, entries: number) =>
    `Das kann veraltet sein: Stand ${moment}, der neueste von ${entriesDative(entries)} auf diesem Gerät.`,
  noState: "Das kann veraltet sein: Auf diesem Gerät ist kein Eintrag.",
  ends: { front: "Vorne: Gabel und Reifen", rear: "Hinten: Dämpfer und Reifen" },
  columns: {
    adjuster: "Einstellpunkt",
    baseline: "Basis-Setup",
    weekend: "Bei der Session",
    bench: "Soll an der Werkbank",
    onTheBike: "Am Bike",
    read: "Abgelesen",
    step: "Schritt",
    from: "Von",
    to: "Auf",
    first: "Pumpe zeigt erst",
    again: "Danach wieder",
    most: "Nie über",
    rider: "Fahrer",
  },
  states: {
    "to set": "",
    set: "",
    adjusted: "angepasst",
    reported: "Fahrer sagt",
    disputed: "ans Bike schauen",
    "no value": "",
  },
  tyrePressure: "Reifendruck",
  inDispute: "strittig",
  none: "–",
  notKnown: "unbekannt",
  leakBelow: (reading: string) => `unter ${reading} ist Luft verloren gegangen`,
  now: (value: string) => `jetzt ${value}`,
  blend: "Das Basis-Setup ist aus eigenen Basis-Setups des Fahrers gemischt, nach den Teilen der Strecke.",
  missingTypes: (types: string) => `Kein eigenes Basis-Setup für ${types}: Die anderen Basis-Setups springen ein.`,
  notFitted:
    "Nicht auf einen gemessenen Sag abgestimmt: Bei Korrekturen aus der Physik stimmt die Richtung, die Größe nur ungefähr.",
  noBaseline: "Dieses Bike hat noch kein Basis-Setup: Es gibt nichts, worauf man es stellen könnte.",
  refused: (adjuster: string, limit: string) => `${adjuster}: ${limit}`,
  sag: {
    title: "Sag",
    atBaseline: (end: string, value: string) => `${end} ${value} beim Basis-Setup, jetzt`,
    unmeasured: (end: string) => `${end} nie gemessen, jetzt`,
    millimetres: "mm",
  },
  bench: {
    title: "Ans Bike bringen, in dieser Reihenfolge",
    order:
      "Die Reihenfolge hält nach jedem Schritt jede Grenze ein. Bei der Temperatur der Werkbank ablesen; schreib auf, was du abliest.",
    nothing: "Nach dem Setup-Blatt ist nichts mehr einzustellen.",
    blocked: "Keine sichere Reihenfolge führt ganz ans Ziel:",
    cautionsTitle,
    cautions: [
      "Gas steht unter Druck und Federn stehen unter Spannung: Gesicht weghalten und unter dem Maximum bleiben, das auf dem Teil steht.",
      "Allen Druck ablassen, bevor du etwas öffnest; nie die Dämpfung oder eine Kammer unter Druck öffnen.",
      "Verschlissene, beschädigte oder überfällige Teile gehören zu einem Fachmechaniker: nicht mit dem Setup darum herumarbeiten.",
      "Die erste Fahrt nach einer Änderung ist langsam und kurz.",
      "Das Handbuch des Herstellers und das Reglement gehen diesem Blatt vor.",
    ],
    steps: (numbers: string, count: number, caution: string) =>
      `${count === 1 ? "Schritt" : "Schritte"} ${numbers}: ${caution}`,
    stepCautions: {
      "gas under pressure": "Gas unter Druck, unter dem Maximum bleiben, das auf dem Teil steht.",
      "release all air before opening": "Aus jeder Kammer alle Luft ablassen, bevor du das Teil öffnest.",
      "spring under load": "Feder entlasten, bevor du etwas drehst oder ausbaust.",
      "count clicks from closed": "Behutsam ganz zudrehen, dann die Klicks beim Aufdrehen zählen.",
      "lower of tyre and rim maximum":
        "Unter dem kleineren der beiden Maximalwerte bleiben, die auf Reifen und Felge stehen.",
    },
  },
  first: `Gas unter Druck, Federn unter Spannung: Lies zuerst „${cautionsTitle}“.`,
  notes: "Notizen",
  team: {
    hint: "Groß: was an der Werkbank einzustellen ist. Klein: was am Bike ist. Ins Kästchen kommt, was du abliest.",
  },
};
