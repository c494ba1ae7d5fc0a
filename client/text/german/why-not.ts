/** German texts of why the advice does not propose a change that somebody has in mind. */
import type { whyNot as model } from "../english/why-not.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const whyNot: Said<typeof model> = {
  title: "Warum keine andere Änderung?",
  hint: "Wähl einen Einstellpunkt und eine Richtung. Die Regeln antworten.",
  adjuster: "Einstellpunkt",
  choose: "Einstellpunkt wählen",
  direction: "Richtung",
  directions: {
    damper: { up: "weiter auf", down: "weiter zu" },
    other: { up: "mehr", down: "weniger" },
  },
  noAdjuster: "Das hat dieses Bike nicht.",
  proposed: "Das ist die erste Anpassung oben.",
  proposedLater: (waitsFor: string) => `Es ist vorgeschlagen, aber noch nicht dran. ${waitsFor}`,
  noRule: "Keine Regel antwortet mit dieser Änderung auf etwas, das ein Fahrer sagt.",
  opposite: (setting: string) => `Der Ratschlag geht in die andere Richtung: ${setting}.`,
  wouldIf: (end: string, reason: string) => `${end}: ${reason}`,
  notSaid: (symptoms: string) => `Jetzt nicht: „${symptoms}“ hat niemand gesagt oder gemessen.`,
  spokenAgainst: (symptoms: string) => `Jetzt nicht: „${symptoms}“ spricht dagegen.`,
  inQuestion: (symptoms: string) => `Erst den Fahrer fragen: „${symptoms}“ widerspricht dem, was sonst gesagt wurde.`,
  anotherWay: (adjuster: string) => `Dieselbe Regel nimmt zuerst: ${adjuster}.`,
  twoChanges: "Zwei Änderungen wegen derselben Klage haben nicht geholfen: nach Service und Schäden schauen.",
  more: (count: number) => plural(count, "weitere Regel", "weitere Regeln"),
};
