/** Why ground and course ask for something, by the rule's id. */
export const conditionWords: Readonly<Record<string, string>> = {
  "ground-wet-tyres": "Sol mouillé : un peu moins de pression dans les pneus laisse les crampons y entrer.",
  "ground-wet-main": "Sol glissant : un peu moins de pression principale garde la roue au sol.",
  "ground-damp-tyres": "Sol humide : un demi-pas sensible de moins dans les pneus, pour le grip.",
  "ground-dust-main": "Sol très sec et meuble : un peu moins de pression principale, pour le grip.",
  "ground-dust-front-tyre":
    "Poussière meuble sur sol dur : un demi-pas sensible de moins dans le pneu avant, pour le grip.",
  "ground-mud-secondary":
    "La boue est lente et ses chocs sont mous : moins de pression secondaire, pour que le débattement serve.",
  "ground-wet-secondary":
    "Une piste mouillée se roule moins vite et tape moins fort : un peu moins de pression secondaire.",
  "ground-damp-main": "Un sol humide glisse d’abord à l’avant : un demi-pas sensible de moins dans la fourche.",
  "ground-wet-rear-low-speed":
    "Sur sol glissant, l’arrière garde le contact avec un peu moins de compression basse vitesse.",
  "cold-oil": "L’huile froide est plus épaisse et freine plus : ouvre l’amortissement d’un pas sensible.",
  "style-calm":
    "Un pilote calme et posé charge moins le vélo : moins de pression secondaire, et un peu moins de pression principale.",
  "style-hard":
    "Un pilote qui pompe et saute fort charge plus le vélo : plus de pression principale et de pression secondaire.",
  "no-baseline-steep":
    "Parties raides sans base propre : plus de pression secondaire, et une fourche plus ferme pour ne pas plonger.",
  "no-baseline-jumpy": "Parties à sauts sans base propre : plus de pression secondaire pour les réceptions.",
  "no-baseline-wet": "Parties mouillées sans base propre : un peu moins de pression partout, pour le grip.",
};
