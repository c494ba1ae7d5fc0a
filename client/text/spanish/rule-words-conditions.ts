/** What the rules for ground, cold, riding style and missing baselines say, by the rule's id. */
export const conditionWords: Readonly<Record<string, string>> = {
  "ground-wet-tyres": "Terreno mojado: con un poco menos de presión en las cubiertas los tacos entran en él.",
  "ground-wet-main": "Terreno resbaladizo: un poco menos de presión principal mantiene la rueda en el suelo.",
  "ground-damp-tyres": "Terreno húmedo: medio paso perceptible menos de presión en las cubiertas, para tener agarre.",
  "ground-dust-main": "Terreno muy seco y suelto: un poco menos de presión principal, para tener agarre.",
  "ground-dust-front-tyre":
    "Polvo suelto sobre terreno duro: medio paso perceptible menos en la cubierta delantera, para tener agarre.",
  "ground-mud-secondary":
    "En el barro se va lento y los golpes son blandos: menos presión secundaria, para que se use el recorrido.",
  "ground-wet-secondary":
    "Una pista mojada se baja más lento y golpea más blando: un poco menos de presión secundaria.",
  "ground-damp-main":
    "En terreno húmedo resbala primero el tren delantero: medio paso perceptible menos en la horquilla.",
  "ground-wet-rear-low-speed":
    "En terreno resbaladizo, el tren trasero mantiene el contacto con un poco menos de compresión de baja velocidad.",
  "cold-oil": "El aceite frío es más espeso y frena más: abre los hidráulicos un paso perceptible.",
  "style-calm":
    "Un piloto tranquilo y estático carga menos la bici: menos presión secundaria y un poco menos de principal.",
  "style-hard": "Un piloto que bombea y salta fuerte carga más la bici: más presión principal y secundaria.",
  "no-baseline-steep":
    "Partes empinadas sin base propia: más presión secundaria, y una horquilla más firme para que no se hunda.",
  "no-baseline-jumpy": "Partes de saltos sin base propia: más presión secundaria para las recepciones.",
  "no-baseline-wet": "Partes mojadas sin base propia: un poco menos de presión en todo, para tener agarre.",
};
