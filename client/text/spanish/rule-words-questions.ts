/** What is asked where symptoms exclude each other, by the rule's id. */
export const questionWords: Readonly<Record<string, string>> = {
  "bottoms-and-never-reaches":
    "Se apuntó que usa todo el recorrido y que no llega nunca al final. ¿Qué golpe lo usó todo, y cuál debería haberlo usado?",
  "bottoms-with-travel-left":
    "Se contaron topes, pero la anilla marca recorrido sin usar. ¿Se puso la anilla en su sitio antes de la bajada?",
  "end-hits-hard-with-travel-left":
    "Se notó que golpea fuerte al final, pero la anilla marca recorrido sin usar. ¿Qué fue lo que golpeó fuerte?",
  "soft-and-too-little-sag":
    "Se nota demasiado blando al inicio, pero va demasiado alto. ¿Se midió el sag en posición de bajada y con toda la equipación?",
  "fast-and-packs-down":
    "Se apuntó que vuelve demasiado rápido y que se endurece golpe a golpe. ¿En qué parte de la pista fue cada cosa?",
  "fast-and-hangs-back":
    "Se apuntó que vuelve demasiado rápido y que se engancha en los agujeros. ¿En qué parte de la pista fue cada cosa?",
  "kicks-and-returns-slowly":
    "Escupe en los saltos, pero vuelve demasiado lento. ¿Es el hidráulico, o un labio tomado demasiado fuerte?",
  "squirms-and-bounces":
    "La cubierta flanea en las curvas y rebota en las piedras. ¿Cuál de las dos cosas cuesta más en esta pista?",
};
