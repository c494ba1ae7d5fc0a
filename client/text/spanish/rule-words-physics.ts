/** What the corrections by physics say. */
export const physicsWords: Readonly<
  Record<string, { readonly when: string; readonly move: string; readonly reason: string }>
> = {
  "own-baseline": {
    when: "la pista es de un solo tipo, y el piloto tiene una base para él",
    move: "tomar la base tal cual",
    reason: "El reglaje propio que el piloto sabe que va bien es el mejor comienzo que hay.",
  },
  blend: {
    when: "la pista mezcla varios tipos",
    move: "mezclar las bases del piloto según la parte de la pista que es de cada tipo",
    reason: "Entre dos reglajes que se sabe que van bien hay uno bueno.",
  },
  "rider-mass": {
    when: "la masa del piloto no es la de la base",
    move: "presión principal, o dureza del muelle, para que el sag no cambie",
    reason: "El mismo sag mantiene la bici en la parte del recorrido que el piloto conoce.",
  },
  altitude: {
    when: "la altitud no es la de la base",
    move: "presión principal, para que el apoyo al final del recorrido no cambie",
    reason: "Con un aire menos denso alrededor, la misma presión leída da un muelle menos progresivo.",
  },
  "rebound-follows": {
    when: "la dureza del muelle en el sag ha cambiado lo que vale un clic o más",
    move: "rebote, los clics que mantienen el grado de amortiguación de la base",
    reason: "Un muelle más duro pide más freno de rebote; uno más blando, menos.",
  },
  temperature: {
    when: "en el banco hace más frío o más calor que en la sesión",
    move: "cada presión, por la ley de los gases a volumen constante, para que sea la correcta en la sesión",
    reason: "Una presión puesta con el fresco de la mañana marca más con el calor de la final.",
  },
};
