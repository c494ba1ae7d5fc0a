/** Spanish texts of a course's profile, and of the file that it comes from. */
import { STEEP_FROM } from "#core/course/course-facts.ts";
import { SHORTEST_TRACK, SMOOTHED_OVER } from "#core/course/track-limits.ts";
import { heightsOnEarth, LONGEST_COURSE } from "#core/weekend/course-shape.ts";
import type { courseProfile as model } from "../english/course-profile.ts";
import type { Said } from "../spoken.ts";
import { chosen, plural } from "./plural.ts";

const steepPercent = Math.round(STEEP_FROM * 100);
const unchanged = "No ha cambiado nada.";

export const courseProfile: Said<typeof model> = {
  title: "Perfil de la pista",
  theProfile: "perfil",
  summary: (length: string, drop: string) => `Perfil: ${length} m de largo, desnivel ${drop} m`,
  none: "Todavía sin perfil. Los saltos y lo mojado se valoran a ojo en todo caso.",
  choose: "Elegir un archivo GPX",
  chooseHint: (megabytes: string) =>
    `GPX 1.1 con altitudes, hasta ${megabytes} MB. No se guarda nada hasta que pulses Guardar.`,
  reading: "Leyendo el archivo…",
  taken: (file: string) => `De ${file}, sin guardar todavía.`,
  leave: "Dejar el perfil como estaba",
  remove: "Quitar el perfil",
  track: "Traza del archivo",
  unnamed: (position: number) => `Traza ${position}`,
  route: (name: string) => `${name} (una ruta planeada)`,
  uphill: (metres: string) => `Esta línea sube ${metres} m.`,
  turn: "Darle la vuelta",
  filled: {
    gaps: (count: number, metres: string) =>
      `${plural(count, "hueco", "huecos")} en la traza, ${chosen(count, "unido", "unidos")} con líneas rectas de ${metres} m en total.`,
    withoutHeight: (count: number) => `${plural(count, "punto no tiene", "puntos no tienen")} altitud.`,
    skipped: (count: number) =>
      `${plural(count, "punto sin posición se ha dejado", "puntos sin posición se han dejado")} fuera.`,
  },
  facts: {
    length: "Longitud",
    slope: "Sobre el terreno",
    drop: "Desnivel",
    climb: "Subidas por el camino",
    mean: "Pendiente media",
    steepest: "Lo más empinado",
  },
  metres: (value: string) => `${value} m`,
  percent: (value: string) => `${value} %`,
  stretch: (from: string, to: string) => `de ${from} a ${to} m`,
  steepestAt: (percent: string, from: string, to: string) => `${percent} % de ${from} a ${to} m`,
  chart: {
    title: "Altitud a lo largo de la pista",
    height: "Altitud, m",
    along: "A lo largo de la pista, m",
    thick: "línea gruesa: empinado",
    sections: "barras: tramos por su número",
    described: (first: string, last: string, length: string, steep: readonly string[]) =>
      `Altitud a lo largo de la pista: de ${first} m en la salida a ${last} m en la meta, ${length} m después. ${
        steep.length === 0 ? "Nada empinado." : `Empinado: ${steep.join(", ")}.`
      }`,
    more: (count: number) => `${count} más`,
  },
  rule: `Empinado es lo que cae un ${steepPercent} % o más (${steepPercent} m en 100 m), con las altitudes suavizadas en ${SMOOTHED_OVER} m; regla propia. Los escalones más cortos no salen.`,
  proposed: (share: string, part: string) => `El ${share} % de la longitud es empinado. Parte propuesta: ${part}.`,
  take: (part: string) => `Poner empinada ${part}`,
  isTaken: (part: string) => `Empinada está en ${part}, como se propone. De saltos y mojada los valoras tú.`,
  problems: {
    tooLarge: (file: string, allowed: string) => `El archivo tiene ${file} MB; se permiten ${allowed} MB. ${unchanged}`,
    unreadable: `El archivo no se puede leer. Elígelo otra vez. ${unchanged}`,
    notText: `El archivo no es texto en UTF-8, como tiene que ser un GPX. ${unchanged}`,
    noReader:
      "El lector de archivos GPX no está todavía en este dispositivo. Prueba otra vez cuando haya conexión con el portátil.",
    notXml: `El archivo está roto o no es un GPX: no se puede leer como XML. ${unchanged}`,
    declares: `El archivo declara un tipo de documento o entidades propias, que en GPX no existen. ${unchanged}`,
    notGpx: (root: string) => `El archivo contiene «${root}», no GPX. ${unchanged}`,
    badOrder: `En este archivo hay trazas o puntos unos dentro de otros, y GPX no lo permite. ${unchanged}`,
    noTrack: `El archivo no tiene ninguna traza ni ruta con dos puntos o más. ${unchanged}`,
    tooManyPoints: (count: string, allowed: string) =>
      `El archivo tiene ${count} puntos; se permiten ${allowed}. Guarda solo la bajada, sin el resto del día. ${unchanged}`,
    tooManyTracks: (count: string, allowed: string) =>
      `El archivo tiene ${count} trazas; se permiten ${allowed}. ${unchanged}`,
    badPlace: (track: string, point: number) =>
      `${track}, punto ${point}: la latitud va de −90 a 90 y la longitud de −180 a 180. ${unchanged}`,
    badHeight: (track: string, point: number) =>
      `${track}, punto ${point}: su altitud está fuera de ${heightsOnEarth.lowest} a ${heightsOnEarth.highest} m. ${unchanged}`,
    noHeight: (track: string) =>
      `${track} no tiene altitudes, así que no dice nada del desnivel. Grábalo con altitudes.`,
    tooShort: (track: string, metres: string) =>
      `${track} mide ${metres} m; hacen falta ${SHORTEST_TRACK} m para un perfil.`,
    tooLong: (track: string, metres: string) =>
      `${track} mide ${metres} m; una pista mide como mucho ${LONGEST_COURSE} m. Guarda solo la bajada.`,
  },
};
