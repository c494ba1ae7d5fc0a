/** Spanish texts of the team's job queue, with which the pit opens. */
import type { jobQueue as model } from "../english/job-queue.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const jobQueue: Said<typeof model> = {
  title: "Qué toca ahora",
  none: "Nada que hacer: todas las bicis están como tienen que estar para esta sesión.",
  noneYet: "Nada que hacer todavía: los reglajes esperan la pista y las condiciones.",
  toRiders: "A los pilotos",
  riders: "Pilotos",
  jobs: (count: number) => plural(count, "tarea", "tareas"),
  team: "El equipo",
  caution:
    "El gas está a presión y los muelles cargados: quédate por debajo del máximo marcado en la pieza. Los avisos de cada paso están en el banco. La primera bajada después de un cambio es lenta y corta.",
  sessions: {
    title: "Sesiones",
    startsIn: (time: string) => `empieza en ${time}`,
    running: "en marcha",
    over: "terminada",
    allOver: "Todas las sesiones de este fin de semana han terminado.",
  },
  kinds: {
    "dispute to check": "Discrepancia por mirar en la bici",
    "reported change to confirm": "Cambio del piloto por confirmar",
    "service overdue": "Mantenimiento vencido",
    "feedback to decide on": "Sensaciones por responder",
    "change to make": "Reglaje por poner",
    "pressure check": "Presiones por comprobar a la nueva temperatura",
    "feedback missing": "Faltan las sensaciones",
    "service due": "Mantenimiento pendiente",
  },
  until: (session: string) => `Antes de ${session},`,
  noneLeft: "Ya no queda ninguna sesión para hacerlo",
  steps: (count: number) => `${plural(count, "paso", "pasos")}, en este orden`,
  step: (adjuster: string, from: string | undefined, to: string) =>
    from === undefined ? `${adjuster}: ${to}` : `${adjuster}: ${from} → ${to}`,
  valueOf: (name: string, value: string) => `${name}: ${value}`,
  atBench: "Al banco",
  doneNow: (what: string) => `Hecho: ${what}`,
  undo: "Deshacer",
  undone: (rider: string, kind: string) => `Deshecho para ${rider}: ${kind}`,
  changedSince: "Ha cambiado desde entonces; cómo está ahora se ve en el banco.",
  change: {
    what: (count: number) => `${settingsText(count)} por poner`,
    why: (session: string) => `La bici no está como piden la pista, el terreno y la temperatura de ${session}.`,
    blocked: "Ningún orden seguro llega a todo: míralo en el banco.",
    touch: "Todo está en la bici",
    said: (count: number) => `${settingsText(count)} en la bici`,
  },
  pressure: {
    what: (count: number) => `${plural(count, "presión", "presiones")} por comprobar`,
    why: (session: string, air: string, bench: string) =>
      `Se puso a otra temperatura. En ${session} el aire está a ${air}; en el banco, a ${bench}.`,
    touch: "Ahora marcan esto",
    said: (count: number) => plural(count, "presión puesta", "presiones puestas"),
    note: (session: string) => `La misma presión a la temperatura de ${session}.`,
  },
  reported: {
    why: (who: string, when: string) => `Lo dijo ${who}, ${when}; ningún mecánico lo ha visto.`,
    touch: (value: string) => `Visto: ${value}`,
    said: (adjuster: string, value: string) => `${adjuster}, ${value}, confirmado en la bici`,
  },
  decide: {
    why: (run: string, cause: string) => `${run}. ${cause}.`,
    of: (run: string) => `${run}.`,
    lookFirst: "Antes hay algo que mirar o que preguntar.",
    noAdvice: "Ninguna regla de los consejos dice nada de esta bajada.",
    noSetup: "No hay consejos hasta apuntar la pista y las condiciones.",
    put: (value: string) => `En la bici: ${value}`,
    putSaid: (adjuster: string, value: string) => `${adjuster}, ${value}, en la bici`,
    leave: "Dejarlo como está",
    leftSaid: "se deja como está",
    read: "Leer y decidir",
  },
  missing: {
    what: (sessions: string) => `Ninguna bajada de ${sessions}`,
    why: (count: number) =>
      count === 1
        ? "La sesión ha terminado. Pregunta por la bajada."
        : "Las sesiones han terminado. Pregunta por las bajadas.",
    reasons: { "nothing to report": "Nada que contar", "did not ride": "No bajó" },
    look: "A sus sensaciones",
  },
  dispute: {
    look: "Mira la bici antes de decir cuál es el bueno.",
    why: "Dos personas dicen cosas distintas.",
    claim: (value: string, who: string) => `Es ${value}, como dice ${who}`,
    claimAfterAll: (value: string) => `Al final es ${value}`,
    go: "Mirar y decir cuál",
  },
  service: {
    used: (used: string, limit: string, left: string) => `${used} ${limit}. ${left}`,
    touch: "Mantenimiento hecho: apuntarlo",
    said: (part: string, work: string) => `${part}, ${work.toLowerCase()}, apuntado ahora`,
  },
};
