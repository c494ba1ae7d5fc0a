/** Spanish texts of the hand-off without a network. */
import type { handOff as model } from "../english/hand-off.ts";
import type { Said } from "../spoken.ts";
import { chosen, entriesText, plural } from "./plural.ts";

export const handOff: Said<typeof model> = {
  link: "Pasar datos sin red",
  title: "Pasar datos sin red",
  hint: "Por códigos: un dispositivo los muestra en su pantalla y el otro los lee con la cámara. Por archivo: un dispositivo lo guarda y el otro lo recibe, por cable, memoria USB o lo que usen los dos móviles para pasarse archivos. No se sobrescribe nada: lo que dos personas han puesto distinto sale como discrepancia.",
  codesNotLoaded: "No se han podido cargar los códigos del servidor. Pasa los datos por archivo.",
  back: "Atrás",
  save: {
    title: "De este dispositivo",
    action: "Guardar todo en un archivo",
    byCodes: "Pasar por códigos",
    share: "Pasar el archivo",
    busy: "Haciendo el archivo…",
    done: (name: string, entries: number) => `${name} está hecho, con ${entriesText(entries)}.`,
    incomplete:
      "Algunos documentos antiguos de este dispositivo no se han podido leer, o no cabían, y no están dentro.",
    where: "Está donde este navegador guarda las descargas.",
    holds: "En el archivo",
    whoFirst: "Di antes quién tiene este dispositivo. Solo entonces tiene abiertos los apuntes de los pilotos.",
    who: "¿Quién eres?",
    team: "Equipo, bicis, bases y fines de semana",
    document: (name: string, entries: number) => `${name}: ${entriesText(entries)}`,
    rider: (name: string, year: number) => `${name}, ${year}`,
    notShared: "El archivo no se ha pasado. Aquí todavía se puede guardar.",
  },
  takeIn: {
    title: "A este dispositivo",
    action: "Recibir un archivo",
    byCodes: "Recibir por códigos",
    ending: (ending: string) => `Un archivo cuyo nombre acaba en ${ending}`,
    reading: "Leyendo el archivo…",
    unreadable: "Este dispositivo no ha podido abrir el archivo. Elígelo otra vez.",
    madeBy: (moment: string, name: string | undefined) =>
      name === undefined ? `Hecho: ${moment}` : `Hecho por ${name}, ${moment}`,
    holds: (entries: number) => `${entriesText(entries)} dentro`,
    fresh: (entries: number) => `${plural(entries, "apunte nuevo", "apuntes nuevos")} aquí`,
    whose: (name: string, entries: number) => `${name}: ${entriesText(entries)}`,
    span: (first: string, last: string) => (first === last ? `De ${first}` : `De ${first} a ${last}`),
    nothingNew: "No hay nada nuevo: este dispositivo ya tiene todo lo que hay dentro.",
    merge: "Juntarlo",
    leave: "Dejarlo",
    merging: "Juntando…",
    merged: (entries: number) =>
      `Juntado: ${plural(entries, "apunte nuevo está", "apuntes nuevos están")} en este dispositivo.`,
    notSaved: (entries: number) =>
      `Juntado: ${plural(entries, "apunte nuevo", "apuntes nuevos")}, pero sin ${chosen(entries, "guardarlo", "guardarlos")} todavía en este dispositivo. Deja abierta esta página.`,
    onward: "Siguen al servidor en cuanto haya conexión con él.",
  },
};
