import type { RuleWords } from "#core/advice/rule-words.ts";

/** What the rules of the sag and of the feel of the spring say. */
export const springWords: Readonly<Record<string, RuleWords>> = {
  "sag-above-target": {
    reason:
      "Il repose trop bas dans son débattement : corrige le sag avant tout ce qui vient plus loin dans la course.",
    notice: "Il se tient plus haut et garde plus de débattement en réserve.",
    otherwise:
      "Mesure encore le sag, en roulant et à l’arrêt ; un ressort qui ne tient pas son sag perd peut-être de l’air.",
  },
  "sag-below-target": {
    reason:
      "Il repose trop haut dans son débattement : corrige le sag avant tout ce qui vient plus loin dans la course.",
    notice: "Il suit mieux les petits chocs et la roue reste au sol.",
    otherwise: "Cherche un frottement : une pièce qui colle montre moins de sag que son ressort n’en donne.",
  },
  "start-harsh": {
    reason: "Les petits chocs passent : libère le début de la course.",
    notice: "Les vibrations et les petites pierres se sentent moins.",
    otherwise: "Des joints secs et une huile de graissage à changer donnent la même sensation : regarde la révision.",
  },
  "start-too-soft": {
    reason: "Il cède tout de suite et paraît flou : un peu plus de soutien au début.",
    notice: "Il se tient mieux en pompant et en pédalant.",
    otherwise: "Mesure le sag ; ce qui paraît mou repose peut-être trop bas.",
  },
  "fork-dives": {
    reason: "La fourche plonge au milieu de la course : plus de soutien à cet endroit.",
    notice: "Elle reste plus haute en virage relevé et dans le raide.",
    otherwise: "Regarde l’arrière : s’il est trop haut, il pousse le poids sur la fourche.",
  },
  "dives-under-braking": {
    reason: "La fourche plonge quand on freine : soutiens-la contre la poussée lente du poids.",
    notice: "L’avant reste plus haut à l’entrée des virages raides, et les bras travaillent moins.",
    otherwise: "Regarde l’arrière : s’il se relève au freinage, il jette le poids vers l’avant.",
  },
  "shock-wallows": {
    reason: "L’arrière s’enfonce au milieu de la course : plus de soutien à cet endroit.",
    notice: "Il soutient quand on pompe et pousse bien sur les appels de saut.",
    otherwise: "Compare avant et arrière : un arrière plus mou que l’avant s’enfonce quel que soit son amortissement.",
  },
  "sinks-in-berms": {
    reason:
      "L’arrière s’enfonce sous la longue poussée d’un virage relevé : d’abord la basse vitesse, puis plus de ressort.",
    notice: "Il garde sa hauteur dans les virages relevés et en sort avec de la vitesse.",
    otherwise: "Contrôle le sag avec le pilote en tenue de course ; il a peut-être augmenté.",
  },
  "middle-harsh": {
    reason: "Les chocs francs passent au milieu de la course : laisse l’amortissement céder plus tôt.",
    notice: "Racines et pierres sont plus rondes.",
    otherwise: "Guette un retour trop lent : tassé, tout choc est dur.",
  },
  "hands-go-numb": {
    reason:
      "Des mains engourdies, ce sont des chocs vifs et durs qui arrivent au guidon : que l’amortissement et le pneu les prennent.",
    notice: "Les mains tiennent tout le run.",
    otherwise: "Poignées, guidon et leviers de frein comptent aussi ; un engourdissement qui reste relève du médecin.",
  },
  "bounces-off-stones": {
    reason: "Les pierres jettent la roue hors de sa ligne : elle doit céder plus vite.",
    notice: "La roue passe sur les pierres au lieu d’être chassée.",
    otherwise: "Un pneu trop dur pour sa carcasse rebondit quel que soit l’amortissement.",
  },
};
