/** What is asked where symptoms exclude each other. */
export const questionWords: Readonly<Record<string, string>> = {
  "bottoms-and-never-reaches":
    "Eingetragen ist beides: der ganze Federweg genutzt und das Ende nie erreicht. Welcher Schlag hat alles genutzt, und welcher hätte es sollen?",
  "bottoms-with-travel-left":
    "Durchschläge wurden gezählt, aber der Messring zeigt übrigen Federweg. Wurde er vor dem Lauf zurückgeschoben?",
  "end-hits-hard-with-travel-left":
    "Das Ende schlug spürbar hart an, aber der Messring zeigt übrigen Federweg. Was hat da hart angeschlagen?",
  "soft-and-too-little-sag":
    "Am Anfang fühlt es sich zu weich an, steht aber zu hoch. Wurde der Sag in Fahrposition und mit der ganzen Ausrüstung gemessen?",
  "fast-and-packs-down":
    "Eingetragen ist beides: federt zu schnell aus und wird Schlag für Schlag härter. Auf welchem Teil der Strecke war was?",
  "fast-and-hangs-back":
    "Eingetragen ist beides: federt zu schnell aus und bleibt hängen. Auf welchem Teil der Strecke war was?",
  "kicks-and-returns-slowly":
    "Es kickt am Absprung, federt aber zu langsam aus. Ist es die Dämpfung oder ein Absprung, der zu hart angefahren wird?",
  "squirms-and-bounces":
    "Der Reifen walkt in Kurven und springt von Steinen ab. Was davon kostet auf dieser Strecke mehr?",
};
