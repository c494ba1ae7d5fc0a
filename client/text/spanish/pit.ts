/** Spanish texts of the pit workplace. */
import type { pit as model } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { bench, goBack } from "./pit-bench.ts";
import { advice, feedback } from "./pit-feedback.ts";
import { byHand, changelog, reported, sheet } from "./pit-sheet.ts";
import { service } from "./service.ts";
import { settingsText } from "./settings-count.ts";

export const pit: Said<typeof model> = {
  weekend: "Fin de semana",
  session: "Sesión",
  noWeekend: "Todavía no hay ningún fin de semana de carreras en este dispositivo.",
  whoFirst: "Di quién eres antes de apuntar nada.",
  who: "¿Quién eres?",
  backToTeam: "Volver al equipo",
  sessionAt: (session: string, start: string) => `${session}, ${start}`,
  aboutRider: "Fin de semana, bici, piloto, imprimir",
  workingFor: (weekend: string, session: string) => `Para ${weekend}: ${session}`,
  board: {
    enterCourse: "Apuntar pista y condiciones",
    changeCourse: "Cambiar pista y condiciones",
    missing: "Los reglajes no se pueden calcular hasta apuntar la pista y las condiciones de la sesión.",
    conditions: (air: string, bench: string | undefined, ground: string) =>
      bench === undefined
        ? `Aire a ${air}, terreno: ${ground}`
        : `Aire a ${air}, en el banco a ${bench}, terreno: ${ground}`,
    course: (steep: string, jumpy: string, wet: string, altitude: string) =>
      `Empinada ${steep}, de saltos ${jumpy}, mojada ${wet}, a ${altitude}`,
    plate: (plate: number) => `Dorsal ${plate}`,
    nothing: "Nada que hacer",
    notWorkedOut: "El reglaje espera la pista y las condiciones",
  },
  disputes: {
    title: "Con discrepancia",
    ofSetting: (adjuster: string, who: string) => `${adjuster}: valores distintos de ${who}`,
    ofCourse: "La pista: dos personas han puesto valores distintos",
    ofConditions: (session: string) => `Condiciones de ${session}: dos personas han puesto valores distintos`,
    ofRun: "Una bajada: dos personas la han apuntado distinta",
    ofDecision: "Una decisión sobre una bajada: dos personas han decidido cosas distintas",
    ofService: "Un mantenimiento hecho: dos personas lo han apuntado distinto",
    ofServicePlan: "El plan de mantenimiento del equipo: dos personas han puesto valores distintos",
    ofOther: (kind: string, key: string) => `${kind} ${key}: dos personas han puesto valores distintos`,
    and: " y ",
    says: (who: string) => `${who} dice`,
    noValue: "ningún valor",
    itIs: (value: string) => `Es ${value}`,
    readAt: (value: string, temperature: string) => `${value} leído a ${temperature}`,
    somethingElse: "Es otra cosa",
    device: (device: string) => `en el dispositivo …${device.slice(-4)}`,
    look: "Mira la bici antes de decir cuál es el bueno.",
    settled: (adjuster: string, value: string) => `${adjuster}: es ${value}`,
    value: "Lo que es",
  },
  course: {
    title: "Pista y condiciones",
    mix: "Qué parte de la pista es…",
    mixHint: "En partes de 1: media pista empinada es 0,5.",
    parts: { steep: "Empinada", jumpy: "De saltos", wet: "Mojada" },
    partUnit: "de 1",
    sum: (sum: string) => `En total suman ${sum}.`,
    sumMust: (sum: string) => `En total suman ${sum}; tienen que sumar 1.`,
    altitude: "Altitud",
    air: "Aire en la sesión",
    bench: "Aire en el banco",
    benchHint: "Deja vacío el del banco si allí hace la misma temperatura que en la sesión.",
    ground: "Terreno",
    sameForAll: "Igual para todas las sesiones",
    disputed: "Dos personas han puesto aquí valores distintos. Lo que guardes lo resuelve.",
    needsAir: (session: string) => `${session}: escribe la temperatura del aire.`,
    needsGround: (session: string) => `${session}: elige el terreno.`,
    needsPart: (part: string) => `${part}: escribe una parte de 1, o 0.`,
    needsAltitude: "Altitud: escribe la altitud sobre el nivel del mar.",
    needsFix: (field: string) => `${field}: corrige antes lo que hay escrito ahí.`,
    theCourse: "pista",
    theConditions: (session: string) => `condiciones de ${session}`,
    changedMeanwhile: (what: string) =>
      `Otra persona ha cambiado esto mientras la página estaba abierta: ${what}. Guarda otra vez para poner lo tuyo en su lugar.`,
    saved: (what: string) => `Guardado: ${what}.`,
    unchanged: "No ha cambiado nada.",
  },
  tabs: {
    label: "Partes de esta página",
    bench: (count: number) => `Banco (${count})`,
    feedback: (count: number) => `Sensaciones (${count})`,
    changelog: (count: number) => `Historial (${count})`,
  },
  undo: {
    label: (what: string) => `Deshacer: ${what}`,
    settings: settingsText,
    left: "dejado como está",
    service: (part: string, work: string) => `${part}, mantenimiento hecho: ${work.toLowerCase()}`,
    setting: (adjuster: string, value: string) => `${adjuster}: ${value}`,
    done: (what: string) => `Deshecho: ${what}`,
    none: "Aquí no hay nada tuyo que deshacer",
  },
  sheet,
  reported,
  bench,
  goBack,
  feedback,
  advice,
  byHand,
  changelog,
  service,
};
