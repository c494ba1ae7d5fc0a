/** Texts that a language writes as English does, each with the reason; "…" stands for what is filled in. */
import type { Language } from "#client/text/language.ts";

type Reasons = Readonly<Record<string, string>>;

/** Alike in every language. */
export const alikeEverywhere: Reasons = {
  Pitslate: "the program's name",
  h: "unit",
  "… h": "unit",
  "… … h": "unit",
  "… N": "unit",
  "… m": "unit",
  "… mm": "unit",
  mm: "unit",
};

/** Alike in one language besides. */
export const alikeWords: Readonly<Record<Exclude<Language, "en">, Reasons>> = {
  de: {
    Name: "a German word too",
    "Version …": "a German word too",
    "Code …": "a German word too",
    Session: "said so at races",
    Sessions: "said so at races",
    "Session …": "said so at races",
    Service: "said so of suspension",
    Feedback: "said so by riders and mechanics",
    "Feedback (…)": "said so by riders and mechanics",
    Sag: "the field's term",
    Grip: "the field's term",
  },
  es: {
    Sag: "the field's term",
    "sag …": "the field's term",
  },
  fr: {
    Manager: "said so in teams",
    "Force, N": "a French word too",
    Altitude: "a French word too",
    altitude: "a French word too",
    Pause: "a French word too",
    Air: "a French word too",
    Note: "a French word too",
    Notes: "a French word too",
    Versions: "a French word too",
    "… version": "a French word too",
    "… versions": "a French word too",
    "Version …": "a French word too",
    "Code …": "a French word too",
    Run: "said so by riders",
    Runs: "said so by riders",
    "Run …": "said so by riders",
    "… run": "said so by riders",
    "… runs": "said so by riders",
    Sag: "the field's term",
    "sag …": "the field's term",
    Grip: "the field's term",
    grip: "the field's term",
  },
  it: {
    Weekend: "said so at races",
    Run: "said so by riders",
    "Run …": "said so by riders",
    "… run": "said so by riders",
    Feedback: "said so by riders and mechanics",
    "Feedback (…)": "said so by riders and mechanics",
    Sag: "the field's term",
    "sag …": "the field's term",
    Grip: "the field's term",
    grip: "the field's term",
  },
};
