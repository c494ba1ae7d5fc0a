import type { RuleWords } from "#core/advice/rule-words.ts";

const damperWantsService = (done: string): string => `Si ${done} ne fait rien, l’amortissement demande une révision.`;

/** What the rules of damping say. */
export const dampingWords: Readonly<Record<string, RuleWords>> = {
  "packs-down": {
    reason: "Il se tasse : il n’est pas revenu avant le choc suivant, et durcit choc après choc.",
    notice: "Les séries de racines ne durcissent plus vers leur fin.",
    otherwise: "Encore un pas ; après, moins de compression.",
  },
  "harsher-hit-by-hit": {
    reason: "Il durcit choc après choc : il n’est pas revenu avant le suivant.",
    notice: "Les séries de racines ne durcissent plus vers leur fin.",
    otherwise: damperWantsService("ouvrir"),
  },
  "returns-too-slowly": {
    reason: "Il revient trop lentement et n’a plus de débattement pour le choc suivant : ouvre la détente.",
    notice: "Il est remonté avant le choc suivant.",
    otherwise: damperWantsService("ouvrir"),
  },
  "returns-too-fast": {
    reason: "Il revient trop vite et jette la roue ou le pilote : ferme la détente.",
    notice: "Il reste calme après les réceptions.",
    otherwise: damperWantsService("fermer"),
  },
  "kicks-back-off-lips": {
    reason: "Il jette le pilote sur les appels de saut : il rend trop vite ce que l’appel y a mis.",
    notice: "Les envols sont à plat, et le vélo accompagne au lieu de doubler.",
    otherwise: "Compare les deux bouts : si l’un est bien plus rapide que l’autre, le vélo bascule en l’air.",
  },
  "bounces-and-returns-fast": {
    reason: "Il rebondit sur les pierres et revient trop vite : ralentis le retour avant d’adoucir le choc.",
    notice: "La roue reste au sol après une pierre.",
    otherwise: "Ensuite ouvre la compression haute vitesse.",
  },
  "skips-under-braking": {
    reason: "L’arrière sautille sur les trous de freinage : il doit les suivre aussi vite qu’ils descendent.",
    notice: "La roue arrière freine au lieu de sautiller.",
    otherwise: "Freine moins de l’arrière, ou plus tôt ; une roue bloquée sautille avec n’importe quel amortissement.",
  },
  "hangs-back": {
    reason:
      "L’arrière bute dans les trous et traîne en sortie de virage : il revient trop tard pour garder la vitesse.",
    notice: "Il garde la vitesse dans le défoncé.",
    otherwise: "Mesure le sag : un arrière qui repose trop bas bute aussi.",
  },
};
