/** Why the rules for ground and course change something. */
export const conditionWords: Readonly<Record<string, string>> = {
  "ground-wet-tyres": "Nasser Boden: Mit etwas weniger Reifendruck greift das Profil hinein.",
  "ground-wet-main": "Rutschiger Boden: Etwas weniger Hauptkammerdruck hält das Rad am Boden.",
  "ground-damp-tyres": "Feuchter Boden: ein halber spürbarer Schritt weniger Reifendruck für Grip.",
  "ground-dust-main": "Sehr trockener, loser Boden: etwas weniger Hauptkammerdruck für Grip.",
  "ground-dust-front-tyre":
    "Loser Staub auf hartem Boden: vorne ein halber spürbarer Schritt weniger Reifendruck für Grip.",
  "ground-mud-secondary":
    "Schlamm ist langsam und seine Schläge sind weich: weniger Zweitkammerdruck, damit der Federweg genutzt wird.",
  "ground-wet-secondary":
    "Eine nasse Strecke wird langsamer gefahren und schlägt weicher: etwas weniger Zweitkammerdruck.",
  "ground-damp-main": "Feuchter Boden rutscht zuerst vorne: ein halber spürbarer Schritt weniger in der Gabel.",
  "ground-wet-rear-low-speed": "Auf rutschigem Boden hält das Heck mit etwas weniger Low-Speed-Druckstufe den Kontakt.",
  "cold-oil": "Kaltes Öl ist zäher und dämpft mehr: die Dämpfung um einen spürbaren Schritt öffnen.",
  "style-calm":
    "Ein ruhiger, statischer Fahrer belastet das Bike weniger: weniger Zweitkammerdruck und etwas weniger Hauptkammerdruck.",
  "style-hard":
    "Ein Fahrer, der viel drückt und weit springt, belastet das Bike mehr: mehr Haupt- und Zweitkammerdruck.",
  "no-baseline-steep":
    "Steile Teile ohne eigenes Basis-Setup: mehr Zweitkammerdruck und eine straffere Gabel gegen das Abtauchen.",
  "no-baseline-jumpy": "Sprunglastige Teile ohne eigenes Basis-Setup: mehr Zweitkammerdruck für die Landungen.",
  "no-baseline-wet": "Nasse Teile ohne eigenes Basis-Setup: überall etwas weniger Druck für Grip.",
};
