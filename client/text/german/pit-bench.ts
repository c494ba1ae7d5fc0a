/** German texts of the pit: what is put on the bike, in order, and the way back. */
import type { pit as model } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { settingsText } from "./settings-count.ts";

export const bench: Said<(typeof model)["bench"]> = {
  title: "Ans Bike bringen",
  order: "In dieser Reihenfolge: So bleibt nach jedem Schritt jede Grenze eingehalten.",
  none: "Nach dem Setup-Blatt ist nichts mehr einzustellen.",
  tick: "Am Bike",
  tickLabel: (adjuster: string, value: string) => `${adjuster} ${value}: am Bike`,
  all: "Alles davon ist am Bike",
  ticked: (adjuster: string, value: string) => `Am Bike: ${adjuster} ${value}`,
  tickedAll: (count: number) => `Am Bike: ${settingsText(count)}`,
  from: (value: string) => `von ${value}`,
  fromUnknown: "vorher unbekannt",
  blocked: "Keine sichere Reihenfolge führt ganz ans Ziel:",
  cautionsTitle: "Bevor du ans Bike gehst",
  cautions: [
    "Gas steht unter Druck und Federn stehen unter Spannung: Gesicht weghalten und unter dem Maximum bleiben, das auf dem Teil steht.",
    "Allen Druck ablassen, bevor du etwas öffnest; die Dämpfung nie öffnen.",
    "Die erste Fahrt nach einer Änderung ist langsam und kurz.",
    "Das Handbuch des Herstellers und das Reglement gehen diesem Programm vor.",
  ],
  how: (count: number) => `So geht es: ${count} Handgriffe`,
  firstReading: (value: string, leak: string) =>
    `Als Erstes sollte ${value} zu lesen sein. Unter ${leak} ist Luft verloren gegangen.`,
  operations: {
    "unload the wheel": "Rad in der Luft, das Teil entlastet.",
    "clean around the valve": "Um das Ventil sauber machen, dann die Kappe abnehmen.",
    "connect the pump": "Pumpe aufschrauben.",
    "take the pump off fast": "Pumpe zügig abschrauben: Was zischt, ist der Schlauch, nicht die Kammer.",
    "cycle the part": "Das Teil ein paarmal durch den Federweg drücken, erst langsam.",
    "close the cap": "Kappe zuschrauben.",
    "write it down": "Hier abhaken.",
    "release all air": "Aus jeder Kammer des Teils alle Luft ablassen.",
    "open the part": "Öffnen, wie es im Handbuch des Herstellers steht.",
    "close the part": "Mit dem angegebenen Drehmoment schließen.",
    "turn to closed": "Behutsam ganz zudrehen.",
    "unload the spring": "Den Vorspannring zurückdrehen, bis die Feder lose ist.",
  },
  setTo: (adjuster: string, value: string) => `${adjuster}: auf ${value} stellen.`,
  checkAgain: (value: string) => `Pumpe noch einmal aufschrauben: Sie sollte ${value} zeigen.`,
  spacersTo: (value: string) => `Auf ${value} umbauen.`,
  springTo: (value: string) => `Feder mit ${value} einbauen.`,
  collarTo: (value: string) => `Vorspannring auf ${value} Vorspannung drehen.`,
  clicksTo: (value: string) => `Von zu aus abzählen: ${value}.`,
  stepCautions: {
    "gas under pressure": "Gas unter Druck: Bleib unter dem Maximum, das auf dem Teil steht.",
    "release all air before opening": "Aus jeder Kammer alle Luft ablassen, bevor du das Teil öffnest.",
    "spring under load": "Die Feder steht unter Spannung: Entlaste sie, bevor du etwas drehst oder ausbaust.",
    "count clicks from closed": "Behutsam ganz zudrehen, dann die Klicks beim Aufdrehen zählen.",
    "lower of tyre and rim maximum":
      "Bleib unter dem kleineren der beiden Maximalwerte, die auf Reifen und Felge stehen.",
  },
};

export const goBack: Said<(typeof model)["goBack"]> = {
  title: "Das ganze Bike zurückstellen",
  weekend: "Zurück zum Wochenend-Setup",
  baseline: "Zurück zum Basis-Setup",
  steps: (count: number) => `Ändert ${settingsText(count)}, in dieser Reihenfolge`,
  already: "Es ist schon am Bike.",
  leftOut: (adjusters: string) => `Ausgelassen, weil strittig: ${adjusters}.`,
  doneWeekend: (count: number) => `Zurück zum Wochenend-Setup: ${settingsText(count)} am Bike`,
  doneBaseline: (count: number) => `Zurück zum Basis-Setup: ${settingsText(count)} am Bike`,
  adjuster: (adjuster: string, value: string) => `${adjuster} zurück auf ${value}`,
};
