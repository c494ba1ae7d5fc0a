/** What is asked where symptoms exclude each other, by the rule's id. */
export const questionWords: Readonly<Record<string, string>> = {
  "bottoms-and-never-reaches":
    "Noté comme utilisant tout le débattement et comme n’atteignant jamais la fin. Quel choc a tout utilisé, et lequel aurait dû ?",
  "bottoms-with-travel-left":
    "Des talonnages ont été comptés, mais le joint témoin montre du débattement restant. Le joint a-t-il été remis en place avant le run ?",
  "end-hits-hard-with-travel-left":
    "La fin a semblé taper fort, mais le joint témoin montre du débattement restant. Qu’est-ce qui a tapé fort ?",
  "soft-and-too-little-sag":
    "Ça paraît trop mou au début, mais ça repose trop haut. Le sag a-t-il été mesuré en position de pilotage, avec tout l’équipement ?",
  "fast-and-packs-down":
    "Noté comme revenant trop vite et comme durcissant choc après choc. Dans quelle partie de la piste, l’un et l’autre ?",
  "fast-and-hangs-back":
    "Noté comme revenant trop vite et comme butant dans les trous. Dans quelle partie de la piste, l’un et l’autre ?",
  "kicks-and-returns-slowly":
    "Ça rue sur les appels de saut, mais ça revient trop lentement. Est-ce l’amortissement, ou un appel pris trop fort ?",
  "squirms-and-bounces":
    "Le pneu flotte en virage et rebondit sur les pierres. Lequel des deux coûte le plus sur cette piste ?",
};
