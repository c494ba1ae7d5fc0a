/** Spanish texts of why the advice does not propose a change that somebody has in mind. */
import type { whyNot as model } from "../english/why-not.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const whyNot: Said<typeof model> = {
  title: "¿Por qué no otro cambio?",
  hint: "Elige un ajuste y hacia dónde moverlo. Responden las reglas.",
  adjuster: "Ajuste",
  choose: "Elige un ajuste",
  direction: "Hacia dónde",
  directions: {
    damper: { up: "más abierto", down: "más cerrado" },
    other: { up: "más", down: "menos" },
  },
  noAdjuster: "Esta bici no tiene ese ajuste.",
  proposed: "Es el primer cambio, el de arriba.",
  proposedLater: (waitsFor: string) => `Está propuesto, pero todavía no. ${waitsFor}`,
  noRule: "Ninguna regla responde con este cambio a nada de lo que dice un piloto.",
  opposite: (setting: string) => `El consejo va en el otro sentido: ${setting}.`,
  wouldIf: (end: string, reason: string) => `${end}: ${reason}`,
  notSaid: (symptoms: string) => `Ahora no: nadie ha dicho ni medido «${symptoms}».`,
  spokenAgainst: (symptoms: string) => `Ahora no: «${symptoms}» habla en contra.`,
  inQuestion: (symptoms: string) => `No sin preguntar antes al piloto: «${symptoms}» contradice lo demás que se dijo.`,
  anotherWay: (adjuster: string) => `La misma regla empieza por otro ajuste: ${adjuster}.`,
  twoChanges: "Dos cambios por la misma queja no han ayudado: mira el mantenimiento y si hay daños.",
  more: (count: number) => plural(count, "regla más", "reglas más"),
};
