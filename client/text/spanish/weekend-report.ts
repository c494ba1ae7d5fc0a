/** Spanish texts of the weekend report. */
import type { End } from "#core/team/place.ts";
import type { weekendReport as model } from "../english/weekend-report.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

/** Where on the bike, within a sentence. */
const at: Record<End, string> = { front: "delante", rear: "detrás" };

export const weekendReport: Said<typeof model> = {
  title: "Informe del fin de semana",
  sessions: {
    title: "Sesiones",
    session: "Sesión",
    start: "Salida",
    air: "Aire",
    bench: "En el banco",
    ground: "Terreno",
    runs: "Bajadas",
    notEntered: "sin apuntar",
    noCourse: "La pista no se apuntó.",
  },
  rider: (name: string, plate: number | undefined) => (plate === undefined ? name : `${name}, n.º ${plate}`),
  bike: (bike: string, mass: string) => `${bike}; piloto de ${mass}`,
  noRiders: "Todavía no hay pilotos con bici en el equipo.",
  nothing: "No se apuntó ninguna bajada ni se puso nada en esta bici.",
  runs: {
    title: "Bajadas",
    none: "No se apuntó ninguna bajada.",
    run: "Bajada",
    session: "Sesión",
    time: "Tiempo",
    front: "Delante",
    rear: "Detrás",
    confidence: "Confianza",
    note: "Nota",
    complaints: (count: number | undefined) =>
      count === undefined ? "no ha dicho nada" : count === 0 ? "bien" : plural(count, "queja", "quejas"),
    confidences: { low: "baja", fair: "normal", high: "alta" },
    empty: "–",
  },
  changes: {
    title: "Qué se cambió y qué salió de ello",
    none: "No se cambió nada.",
    when: "Cuándo",
    who: "Quién",
    what: "Qué",
    why: "Por qué",
    outcome: "Después",
    line: (adjuster: string, from: string, to: string) => `${adjuster}: ${from} → ${to}`,
    first: (adjuster: string, to: string) => `${adjuster}: primer valor, ${to}`,
    still: (adjuster: string, value: string) => `${adjuster}: sigue en ${value}`,
    withdrawn: "retirado",
    more: (count: number) => `y ${count} más`,
    answers: (run: number) => `Responde a la bajada ${run}.`,
    careful: "Una sola bajada prueba poco: también cambian la pista, la meteorología y el piloto.",
  },
  outcome: {
    start: "Ya en la bici en la primera bajada.",
    "taken back": "Deshecho.",
    "not ridden": "Sin bajadas con ello en este fin de semana.",
    compared: (before: number, after: number) => `Bajada ${after} frente a la ${before}:`,
    seconds: (seconds: string, isFaster: boolean) => `${seconds} s más ${isFaster ? "rápida" : "lenta"}`,
    sameTime: "el mismo tiempo",
    noTimes: "falta el tiempo de alguna de las dos",
    otherSession: "en otra sesión",
    noComplaints: "sin quejas en ninguna de las dos",
    complaints: (end: End, { before, after }: { before: number | undefined; after: number | undefined }) =>
      `quejas ${at[end]}: ${before ?? "sin decir"} → ${after ?? "sin decir"}`,
  },
  end: {
    title: "Cómo acabó",
    holds: (session: string, air: string) => `Presiones como se leen en ${session} a ${air}.`,
    adjuster: "Ajuste",
    baseline: "Base",
    ended: "Acabó en",
    difference: "Diferencia",
    same: (count: number) => `${settingsText(count)} ${chosen(count, "acabó", "acabaron")} en la base.`,
    allSame: "Todo acabó en la base.",
    states: { unknown: "no se sabe", disputed: "con discrepancia" },
    reported: "lo dice el piloto, sin confirmar",
    why: {
      "nothing was set": "En este fin de semana no se puso nada en esta bici.",
      "no course": "La pista no se apuntó, así que no hay base con la que comparar.",
      "no conditions": "Ninguna sesión tiene condiciones, así que no hay base con la que comparar.",
    },
  },
  times: {
    title: "Tiempos de las bajadas: más abajo, más rápido",
    changed: "cambiado",
    run: (number: number) => `Bajada ${number}`,
    described: (facts: { count: number; fastest: string; fastestRun: number; slowest: string; slowestRun: number }) =>
      `${plural(facts.count, "bajada", "bajadas")} con tiempo: la más rápida, la ${facts.fastestRun}, en ${facts.fastest}; la más lenta, la ${facts.slowestRun}, en ${facts.slowest}.`,
    changes: (runs: string, count: number) =>
      count === 0
        ? "Entre ellas no se cambió nada."
        : `${chosen(count, "Primera bajada", "Primeras bajadas")} con un cambio en la bici: ${runs} (en negro).`,
  },
  settings: {
    title: "Ajustes que se cambiaron, bajada a bajada",
    described: (adjuster: string, values: string) => `${adjuster}: ${values}.`,
    atRun: (value: string, run: number) => `${value} desde la bajada ${run}`,
    unknown: "no se sabe",
  },
};
