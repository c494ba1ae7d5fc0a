/** Spanish texts of the data that goes out and comes in. */
import type { data as model } from "../english/data.ts";
import type { Said } from "../spoken.ts";
import { chosen, entriesText, plural } from "./plural.ts";

export const data: Said<typeof model> = {
  link: "Importar y exportar datos",
  title: "Importar y exportar datos",
  forWhom: "Solo un mecánico o un mánager importa y exporta datos.",
  who: "¿Quién eres?",
  back: { mechanic: "Al box", manager: "Al análisis" },
  saved: (name: string) => `${name} está hecho. Está donde este navegador guarda las descargas.`,
  file: {
    tooLarge: (bytes: number, most: number) =>
      `Este archivo tiene ${megabytes(bytes)} MB; se leen como mucho ${megabytes(most)} MB. Impórtalo en varios archivos.`,
    unreadable: "Este dispositivo no ha podido abrir el archivo. Elígelo otra vez.",
    notText:
      "Este archivo no es texto en UTF-8. Guárdalo como UTF-8 (una hoja de cálculo lo ofrece junto al CSV) y elígelo otra vez.",
    quotes: (line: number) =>
      `Línea ${line}: hay unas comillas abiertas que no se cierran como pide CSV. Guarda la tabla otra vez como CSV.`,
    noTable:
      "En este archivo no hay ninguna tabla: hace falta una fila con los nombres de las columnas y filas debajo.",
    reading: "Leyendo el archivo…",
    writing: "Escribiendo…",
    notLoaded:
      "No se ha podido cargar del servidor el programa de las tablas. Prueba otra vez cuando haya conexión con él.",
  },
  team: {
    title: "Todos los datos del equipo",
    hint: "Un archivo JSON con todo lo que vale ahora: personas, bicis, piezas, bases, fines de semana, ajustes, bajadas. Otros también pueden escribir un archivo así.",
    schema: "La forma del archivo (JSON Schema)",
    save: "Guardar todo como JSON",
    take: "Importar un archivo JSON",
  },
  tables: {
    title: "Tablas para la hoja de cálculo",
    which: "Tabla",
    names: {
      riders: "Pilotos",
      baselines: "Bases",
      settings: "Ajustes de las bicis",
      changelog: "Historial (solo exportar)",
      runs: "Bajadas (solo exportar)",
    },
    form: "La hoja de cálculo escribe",
    forms: { point: "62.5, comas entre celdas", comma: "62,5; punto y coma entre celdas" },
    save: "Guardar como CSV",
    take: "Importar un archivo CSV",
    hint: "Pilotos, bases o ajustes: lo dice la primera fila. Los ajustes importados cuentan como puestos ahora en la bici, en el fin de semana elegido aquí.",
    weekend: "Fin de semana",
  },
  times: {
    title: "Tiempos de las bajadas",
    hint: "Del archivo CSV de un cronometraje. Cada tiempo va a la bajada del piloto que aún no tiene, o hace una bajada que solo tiene tiempo. Lo que se dijo de una bajada no cambia.",
    take: "Elegir un archivo con tiempos",
    weekend: "Fin de semana",
    session: "Sesión",
    columns: "Qué dice cada columna",
    column: { plate: "Dorsal", name: "Nombre", time: "Tiempo", session: "Sesión" },
    none: "ninguna columna",
    sessionHint: "Si ninguna columna dice la sesión, vale la elegida arriba.",
    unnamed: (number: number) => `Columna ${number}`,
    needs: "Elige la columna del tiempo y la del dorsal o la del nombre.",
    look: "Ver qué cambiaría",
    tooMany: (most: number) => `Esta tabla tiene más de ${most} filas; impórtala en varios archivos.`,
  },
  preview: {
    title: (name: string) => `Lo que cambiaría ${name}`,
    counts: (fresh: number, changes: number, same: number, refused: number) =>
      `${plural(fresh, "nuevo", "nuevos")}, ${plural(changes, "cambio", "cambios")}, ${same} sin cambios, ${plural(refused, "rechazado", "rechazados")}`,
    nothing: "No cambiaría nada: todo lo que se puede importar ya está así.",
    refused: "Rechazado",
    changes: "Cambios",
    fresh: "Nuevo",
    difference: (field: string, from: string | undefined, to: string | undefined) =>
      `${field}: ${from ?? "nada"} → ${to ?? "nada"}`,
    take: "Importarlo",
    takeGood: (count: number) => (count === 1 ? "Importar el que vale" : `Importar los ${count} que valen`),
    leave: "Dejarlo",
    more: (count: number) => `Mostrar ${count} más`,
    line: (place: string, sentence: string) => `${place}: ${sentence}`,
  },
  note: (name: string) => `Del archivo ${name}`,
  done: (count: number) => `${chosen(count, "Importado", "Importados")}: ${entriesText(count)}.`,
  moved: "Algo ha cambiado aquí mientras mirabas. Esto es lo que cambiaría el archivo ahora.",
  undo: "Deshacer todo el archivo",
  undone: (count: number, kept: number) =>
    `Deshecho: ${entriesText(count)}.${kept > 0 ? ` ${kept} ${chosen(kept, "cambió después, y se queda", "cambiaron después, y se quedan")}.` : ""}`,
};

function megabytes(bytes: number): number {
  return Math.ceil(bytes / 1_000_000);
}
