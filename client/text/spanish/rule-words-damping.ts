import type { RuleWords } from "#core/advice/rule-words.ts";

const seriesOfRoots = "Las series de raíces ya no se endurecen hacia el final.";

/** What the rules of the return say. */
export const dampingWords: Readonly<Record<string, RuleWords>> = {
  "packs-down": {
    reason: "Se queda comprimido: no ha vuelto antes del golpe siguiente, y se endurece golpe a golpe.",
    notice: seriesOfRoots,
    otherwise: "Un paso más; después, menos compresión.",
  },
  "harsher-hit-by-hit": {
    reason: "Se endurece de golpe en golpe: no ha vuelto antes del siguiente.",
    notice: seriesOfRoots,
    otherwise: "Si abrir no hace nada, el hidráulico pide mantenimiento.",
  },
  "returns-too-slowly": {
    reason: "Vuelve demasiado lento y no le queda recorrido para el golpe siguiente: abre el rebote.",
    notice: "Está otra vez arriba antes del golpe siguiente.",
    otherwise: "Si abrir no hace nada, el hidráulico pide mantenimiento.",
  },
  "returns-too-fast": {
    reason: "Vuelve demasiado rápido y despide la rueda o al piloto: cierra el rebote.",
    notice: "Se queda tranquilo después de las recepciones.",
    otherwise: "Si cerrar no hace nada, el hidráulico pide mantenimiento.",
  },
  "kicks-back-off-lips": {
    reason: "Escupe al piloto en el labio de los saltos: devuelve demasiado rápido lo que ha metido el labio.",
    notice: "Los saltos salen nivelados, y la bici acompaña en vez de adelantar.",
    otherwise: "Compara los dos trenes: uno mucho más rápido que el otro gira la bici en el aire.",
  },
  "bounces-and-returns-fast": {
    reason: "Rebota en las piedras y vuelve demasiado rápido: frena el retorno antes de ablandar el golpe.",
    notice: "La rueda sigue en el suelo después de una piedra.",
    otherwise: "Después abre la compresión de alta velocidad.",
  },
  "skips-under-braking": {
    reason: "El tren trasero va a saltos en los baches de frenada: tiene que bajar con ellos tan rápido como caen.",
    notice: "La rueda trasera frena en vez de ir a saltos.",
    otherwise: "Frena menos con la de atrás, o antes; una rueda bloqueada va a saltos con cualquier hidráulico.",
  },
  "hangs-back": {
    reason:
      "El tren trasero se engancha en los agujeros y al salir de las curvas: vuelve demasiado tarde para llevar la velocidad.",
    notice: "Lleva la velocidad en las zonas rotas.",
    otherwise: "Mide el sag: un tren trasero demasiado hundido también se engancha.",
  },
};
