/**
 * Spanish texts that all workplaces share, as they are said in Spain; the reader is "tú".
 *
 * Words of the trade, one word a thing, in all parts:
 * - baseline: base (f.); setup: reglaje, setup sheet: hoja de reglajes; adjuster and setting: ajuste; adjustment: cambio
 * - course: pista (f.), so its types are feminine: empinada, de saltos, mojada; ground: terreno (m.); venue: sede
 * - pit, bench, trackside: box, banco, a pie de pista; session: sesión; entrenamiento, clasificatoria, final; run: bajada
 * - rider, mechanic, manager, team: piloto, mecánico, mánager, equipo; plate: dorsal; front and rear end: tren
 * - fork, shock, tyre, rim: horquilla, amortiguador, cubierta, llanta; lower legs: botellas; damper: hidráulico
 * - main and secondary pressure or chamber: principal, secundaria; volume spacer: espaciador; spring: muelle
 * - spring rate: dureza del muelle; preload, collar: precarga, rosca; open, closed, click: abierto, cerrado, clic
 * - rebound: rebote; low-speed and high-speed compression: compresión de baja, de alta velocidad; return: retorno
 * - travel: recorrido, also of what is felt along the stroke; stroke as a length of a part: carrera; ring: anilla
 * - sag: sag; to bottom out: hacer tope; grip: agarre; berm: peralte; harsh: seco; felt step: paso perceptible
 * - feedback: sensaciones; changelog: historial; reason: motivo; limit: límite; to approve, to send back: aprobar, devolver
 * - in dispute: con discrepancia; to settle: resolver; to write down, entry: apuntar, apunte
 * - service, due, overdue: mantenimiento, pendiente, vencido; bath oil: aceite de lubricación
 * - section: tramo; of a recorded GPX file: traza; drop: desnivel
 * - hand over, take in: pasar, recibir; from a file: importar
 * - job, step: tarea, paso; complaint: queja; cautions: avisos; to fold away: plegar
 * - printed page, report: página impresa, informe; session sheet: hoja de la sesión; rain lock: bloqueo de lluvia
 */
import type { common as model } from "../english/common.ts";
import type { Said } from "../spoken.ts";
import { chosen, entriesText } from "./plural.ts";

export const common: Said<typeof model> = {
  name: "Pitslate",
  loading: "Leyendo la copia de este dispositivo…",
  loadingScreen: "Abriendo la pantalla…",
  notLoaded:
    "No se ha podido cargar esta pantalla del servidor. Lo que hay en este dispositivo está a salvo. Prueba otra vez cuando haya conexión con el servidor.",
  fault:
    "Esta pantalla tiene un fallo y no puede seguir. Lo guardado está a salvo. Ábrela otra vez o vuelve al inicio.",
  again: "Probar otra vez",
  toStart: "Al inicio",
  back: "Atrás",
  find: "Buscar",
  language: "Idioma",
  units: {
    title: "Unidades",
    hint: "Lo que lees y escribes en este dispositivo va en estas unidades. Si no eliges, cada valor sigue en la unidad en que se escribió.",
    of: { pressure: "Presión", mass: "Masa", temperature: "Temperatura" },
  },
  save: "Guardar",
  cancel: "Cancelar",
  close: "Cerrar",
  undo: "Deshacer",
  more: "Un paso más",
  less: "Un paso menos",
  notKnown: "no se sabe",
  caution: "Cuidado.",
  theme: { sun: "Sol", dark: "Oscuro", switchTo: (name: string) => `Cambiar de pantalla: ${name.toLowerCase()}` },
  update: {
    waiting: "Hay una versión más nueva de Pitslate. Termina antes lo que estás escribiendo.",
    take: "Usarla ya",
  },
  whoAreYou: {
    title: "¿Quién eres?",
    hint: "Lo que apuntas lleva tu nombre. Puedes cambiarlo cuando quieras.",
    none: "Todavía no hay ningún equipo en este dispositivo. Llega del portátil del box en cuanto haya conexión.",
    change: "Cambiar",
    holder: (name: string) => `Este dispositivo lo tiene ${name}`,
  },
  roles: { mechanic: "Mecánico", rider: "Piloto", manager: "Mánager" },
  workplaces: { mechanic: "Box", rider: "A pie de pista", manager: "Análisis" },
  courseTypes: { steep: "empinada", jumpy: "de saltos", wet: "mojada" },
  grounds: { "dry dust": "polvo seco", dry: "seco", damp: "húmedo", wet: "mojado", mud: "barro" },
  places: {
    fork: "Horquilla",
    shock: "Amortiguador",
    "front-tyre": "Cubierta delantera",
    "rear-tyre": "Cubierta trasera",
  },
  adjusters: {
    "main-pressure": "Presión principal",
    "secondary-pressure": "Presión secundaria",
    "volume-spacers": "Espaciadores de volumen",
    "spring-rate": "Dureza del muelle",
    preload: "Precarga",
    rebound: "Rebote",
    "low-speed-compression": "Compresión de baja velocidad",
    "high-speed-compression": "Compresión de alta velocidad",
    "tyre-pressure": "Presión",
  },
  adjusterAt: (place: string, adjuster: string) => `${place}, ${adjuster.toLowerCase()}`,
  counts: {
    clicks: (value: number) => chosen(value, "clic", "clics"),
    turns: (value: number) => chosen(value, "vuelta", "vueltas"),
    spacers: (value: number) => chosen(value, "espaciador", "espaciadores"),
  },
  stepper: {
    allowed: (minimum: string, maximum: string) => `de ${minimum} a ${maximum}`,
    outside: (label: string, value: string, allowed: string) =>
      `${label}: ${value} está fuera de lo permitido, ${allowed}.`,
    noNumber: (label: string, typed: string, allowed: string) =>
      `${label}: «${typed}» no es un número. Permitido: ${allowed}.`,
  },
  status: {
    loading: "Leyendo la copia de este dispositivo",
    onServer: "En el servidor",
    onThisDevice: (waiting: number) =>
      waiting === 0
        ? "En este dispositivo. Preguntando al servidor qué tiene"
        : `Solo en este dispositivo: ${entriesText(waiting)} sin llegar al servidor`,
    offline: (since: string, waiting: number) =>
      waiting === 0
        ? `Sin conexión desde ${since}. Todo lo tuyo está en el servidor`
        : `Sin conexión desde ${since}. ${entriesText(waiting)} solo en este dispositivo`,
    saving: "Guardando en este dispositivo",
    notSaved: (waiting: number) =>
      waiting === 0
        ? "Sin guardar en este dispositivo, pero en el servidor"
        : `Sin guardar en este dispositivo: deja abierta esta página. ${entriesText(waiting)} en ningún otro sitio todavía`,
    unreadable: (count: number) => `${entriesText(count)} que esta versión no sabe leer`,
  },
  holding: {
    unnamed: (count: number) => (count === 1 ? "1 dispositivo sin nombre" : `${count} dispositivos sin nombre`),
    sentence: (where: { here: boolean; server: boolean; with: string | undefined }) => {
      const own = where.here ? "" : "Sin guardar en este dispositivo. ";
      if (where.server)
        return `${own}En el servidor${where.with ? `; también lo tiene: ${where.with}` : "; en ningún otro dispositivo todavía"}.`;
      return where.with
        ? `${own}Todavía no en el servidor; lo tiene: ${where.with}.`
        : `${own}${where.here ? "Solo en este dispositivo." : "En ningún otro sitio todavía."}`;
    },
  },
};
