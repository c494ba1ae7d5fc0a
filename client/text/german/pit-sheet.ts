/** German texts of the pit: the setup sheet, and what was set on the bike. */
import type { pit as model } from "../english/pit.ts";
import type { Said } from "../spoken.ts";

export const sheet: Said<(typeof model)["sheet"]> = {
  title: "Setup-Blatt",
  difference: "gegen Basis-Setup",
  noDifference: "kein Wert",
  baseline: "Basis-Setup",
  blend: "Mischung",
  weekend: "Wochenende",
  bench: "Werkbank",
  onTheBike: "Am Bike",
  unknown: "unbekannt",
  inDispute: "strittig",
  readsNow: "Zeigt jetzt",
  riderSays: "Fahrer sagt",
  why: (count: number) => (count === 1 ? "Warum: 1 Grund" : `Warum: ${count} Gründe`),
  whyNone: "Warum und ändern",
  refused: (limit: string) => `Nicht gemacht, eine Grenze verhindert es: ${limit}`,
  states: {
    "to set": "Offen",
    set: "Am Bike",
    adjusted: "Angepasst: nicht wie im Blatt",
    reported: "Vom Fahrer gemeldet",
    disputed: "Strittig",
    "no value": "Kein Wert",
  },
  provenance: {
    "own baseline": "eigenes Basis-Setup",
    "blend of own baselines": "Mischung eigener Basis-Setups",
    "common practice": "gängige Praxis",
    physics: "Physik",
  },
  notFitted:
    "Nicht abgestimmt: Beim Basis-Setup wurde kein Sag gemessen, daher stimmt bei Korrekturen aus der Physik die Richtung, die Größe nur ungefähr.",
  missingTypes: (types: string) => `Kein eigenes Basis-Setup für ${types}: Die anderen Basis-Setups springen ein.`,
  noBaseline: "Dieses Bike hat noch kein Basis-Setup: Es gibt nichts, worauf man es stellen könnte.",
  setByHand: "Anderen Wert einstellen",
  backToWeekend: (value: string) => `Zurück zum Wochenend-Setup: ${value}`,
  backToBaseline: (value: string) => `Zurück zum Basis-Setup: ${value}`,
};

export const reported: Said<(typeof model)["reported"]> = {
  title: "Vom Fahrer gemeldet",
  hint: "An der Strecke geändert. Schau ans Bike, dann bestätige.",
  confirm: (value: string) => `Bestätigen: ${value} ist am Bike`,
  other: "Anderen Wert einstellen",
  confirmed: (adjuster: string, value: string) => `Bestätigt: ${adjuster} ${value}`,
};

export const byHand: Said<(typeof model)["byHand"]> = {
  title: "Anderen Wert einstellen",
  adjuster: "Einstellpunkt",
  value: "Wert",
  now: (value: string) => `Zeigt jetzt: ${value}`,
  note: "Notiz, wenn du magst",
  save: "Es ist am Bike",
  saved: (adjuster: string, value: string) => `Von Hand eingestellt: ${adjuster} ${value}`,
};

export const changelog: Said<(typeof model)["changelog"]> = {
  title: "Protokoll",
  none: "An diesem Bike wurde noch nichts eingestellt.",
  line: (from: string, to: string) => `${from} → ${to}`,
  nothing: "kein Wert",
  inDispute: "strittig",
  forRun: (run: string) => `Antwort auf den Lauf: ${run}`,
  standings: { "on the bike": "am Bike", reported: "gemeldet" },
  current: "Aktuell",
  undo: (value: string) => `Rückgängig: zurück auf ${value}`,
  undoNone: "Rückgängig: kein Wert, wie vorher",
  back: (value: string) => `Zurück auf ${value}, wie davor`,
  undone: (adjuster: string, value: string) => `${adjuster} zurück auf ${value}`,
  more: (count: number) => `${count} weitere zeigen`,
};
