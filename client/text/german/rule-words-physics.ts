import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the corrections of the physics say: when, what and why. */
export const physicsWords: Readonly<Record<string, RuleWords & { readonly when: string; readonly move: string }>> = {
  "own-baseline": {
    when: "die Strecke ist von einer Art, für die der Fahrer ein Basis-Setup hat",
    move: "das Basis-Setup nehmen, wie es ist",
    reason: "Das eigene, bewährte Setup des Fahrers ist der beste Anfang.",
  },
  blend: {
    when: "die Strecke ist eine Mischung von Arten",
    move: "die Basis-Setups des Fahrers mischen, je nachdem, wie viel der Strecke von jeder Art ist",
    reason: "Zwischen zwei bewährten Setups liegt ein gutes.",
  },
  "rider-mass": {
    when: "das Gewicht des Fahrers ist anders als beim Basis-Setup",
    move: "Hauptkammerdruck oder Federrate so, dass der Sag bleibt",
    reason: "Gleicher Sag hält das Bike in dem Teil des Federwegs, den der Fahrer kennt.",
  },
  altitude: {
    when: "die Höhe über Meer ist anders als beim Basis-Setup",
    move: "Hauptkammerdruck so, dass der Halt spät im Hub bleibt",
    reason: "Dünnere Luft um die Feder macht denselben angezeigten Druck weniger progressiv.",
  },
  "rebound-follows": {
    when: "die Federhärte beim Sag hat sich um so viel geändert, wie ein Klick ausmacht, oder mehr",
    move: "Zugstufe um die Klicks, mit denen das Dämpfungsmaß des Basis-Setups bleibt",
    reason: "Eine härtere Feder braucht mehr Zugstufe, eine weichere weniger.",
  },
  temperature: {
    when: "an der Werkbank ist es kälter oder wärmer als bei der Session",
    move: "jeden Druck nach dem Gasgesetz bei gleichem Volumen so, dass er bei der Session stimmt",
    reason: "Ein Druck, der in der Kühle des Morgens eingestellt wird, zeigt in der Hitze des Rennens mehr.",
  },
};
