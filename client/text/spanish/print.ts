/** Spanish texts of the pages that are printed, and of the screens that show them before. */
import type { print as model } from "../english/print.ts";
import type { Said } from "../spoken.ts";
import { chosen, entriesText } from "./plural.ts";

export const print: Said<typeof model> = {
  links: {
    sheet: "Imprimir la hoja de reglajes",
    team: "Imprimir la hoja de la sesión",
    report: "Informe del fin de semana",
  },
  who: "¿Quién eres?",
  forWhom: "Di antes quién eres: la página lleva el nombre de quien la imprime.",
  forTeam: "En esta página salen todos los pilotos: la imprime un mecánico o un mánager.",
  noWeekend: "Todavía no hay ningún fin de semana de carreras en este dispositivo.",
  weekend: "Fin de semana",
  session: "Sesión",
  paper: "Papel",
  print: "Imprimir",
  hint: "En la ventana de impresión del navegador deja la escala al 100 %. Todo va en negro sobre blanco; no hace falta imprimir el fondo.",
  preview: "La página tal como saldrá impresa",
  back: { pit: "Volver al equipo", rider: "Volver al piloto", review: "Volver al análisis" },
  sheetTitle: "Hoja de reglajes",
  teamTitle: "Hoja de la sesión",
  plate: (plate: number) => `N.º ${plate}`,
  mass: (mass: string) => `piloto de ${mass}`,
  sessionAt: (session: string, start: string) => `${session}, ${start}`,
  course: (steep: string, jumpy: string, wet: string, altitude: string) =>
    `Empinada ${steep}, de saltos ${jumpy}, mojada ${wet}, a ${altitude}`,
  conditions: (air: string, bench: string | undefined, ground: string) =>
    bench === undefined
      ? `Aire a ${air}, terreno: ${ground}`
      : `Aire a ${air}, en el banco a ${bench}, terreno: ${ground}`,
  printed: (moment: string, who: string) => `Impreso por ${who}, ${moment}.`,
  state: (moment: string, entries: number) =>
    `Puede no estar al día: vale hasta el último apunte, ${moment}, de ${entriesText(entries)} en este dispositivo.`,
  noState: "Puede no estar al día: no hay ningún apunte en este dispositivo.",
  ends: { front: "Delante: horquilla y cubierta", rear: "Detrás: amortiguador y cubierta" },
  columns: {
    adjuster: "Ajuste",
    baseline: "Base",
    weekend: "En la sesión",
    bench: "Poner en el banco",
    onTheBike: "En la bici",
    read: "Leído",
    step: "Paso",
    from: "Desde",
    to: "Poner",
    first: "La bomba marca primero",
    again: "Después marca",
    most: "Nunca más de",
    rider: "Piloto",
  },
  states: {
    "to set": "",
    set: "",
    adjusted: "cambiado",
    reported: "lo dice el piloto",
    disputed: "mira la bici",
    "no value": "",
  },
  tyrePressure: "Presión de la cubierta",
  inDispute: "con discrepancia",
  none: "–",
  notKnown: "no se sabe",
  leakBelow: (reading: string) => `por debajo de ${reading} ha perdido aire`,
  now: (value: string) => `ahora ${value}`,
  blend: "La base es una mezcla de las bases propias del piloto, por partes de la pista.",
  missingTypes: (types: string) => `Sin base propia para pista ${types}: en su lugar valen las otras bases.`,
  notFitted:
    "Sin ajustar a un sag medido: lo que corrige la física acierta en la dirección y solo más o menos en la cantidad.",
  noBaseline: "Esta bici no tiene base todavía: no hay reglaje que ponerle.",
  refused: (adjuster: string, limit: string) => `${adjuster}: ${limit}`,
  sag: {
    title: "Sag",
    atBaseline: (end: string, value: string) => `${end}: ${value} en la base, ahora`,
    unmeasured: (end: string) => `${end}: sin medir nunca, ahora`,
    millimetres: "mm",
  },
  bench: {
    title: "Poner en la bici, en este orden",
    order: "Este orden respeta todos los límites en cada paso. Lee a la temperatura del banco y escribe lo que leas.",
    nothing: "No queda nada por poner de la hoja.",
    blocked: "Ningún orden seguro llega a todo:",
    cautionsTitle: "Antes de tocar la bici",
    cautions: [
      "El gas está a presión y los muelles cargados: aparta la cara y quédate por debajo del máximo marcado en la pieza.",
      "Suelta toda la presión antes de abrir nada; no abras nunca un hidráulico ni una cámara con presión.",
      "Las piezas gastadas, dañadas o con el mantenimiento vencido van a un mecánico cualificado; no se tapan con ajustes.",
      "La primera bajada después de un cambio es lenta y corta.",
      "El manual del fabricante y el reglamento de la prueba mandan más que esta hoja.",
    ],
    steps: (numbers: string, count: number, caution: string) =>
      `${chosen(count, "Paso", "Pasos")} ${numbers}: ${caution}`,
    stepCautions: {
      "gas under pressure": "gas a presión, quédate por debajo del máximo marcado en la pieza.",
      "release all air before opening": "suelta todo el aire de todas las cámaras antes de abrir la pieza.",
      "spring under load": "quítale la carga al muelle antes de girar o sacar nada.",
      "count clicks from closed": "ciérralo del todo con suavidad y después cuenta los clics hacia abierto.",
      "lower of tyre and rim maximum":
        "quédate por debajo del menor de los dos máximos marcados en la cubierta y en la llanta.",
    },
  },
  first: "Gas a presión, muelles cargados: lee primero «Antes de tocar la bici».",
  notes: "Notas",
  team: {
    hint: "En grande, lo que hay que poner en el banco. En pequeño, lo que lleva la bici. El recuadro es para lo que leas.",
  },
};
