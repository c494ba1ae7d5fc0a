/** Spanish texts of the named sections of a course. */
import type { sections as model } from "../english/sections.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const sections: Said<typeof model> = {
  shape: "Perfil de un archivo GPX y tramos con nombre",
  count: (count: number) => plural(count, "tramo", "tramos"),
  title: "Tramos de la pista",
  theSections: "tramos",
  hint: "Ponles el nombre que usan los pilotos, como «pedrera». Así pueden decir dónde pasó algo. El principio y el final pueden quedar vacíos.",
  none: "Ningún tramo tiene nombre.",
  add: "Añadir un tramo",
  full: (most: number) => `${most} tramos son los que puede haber como mucho.`,
  position: (position: number) => `Tramo ${position}`,
  name: "Nombre",
  from: "Desde",
  to: "Hasta",
  remove: (name: string) => `Quitar ${name}`,
  fieldOf: (section: string, field: string) => `${section}: ${field}`,
  problems: {
    noName: (section: string) => `${section}: ponle un nombre de 1 a 80 caracteres, o quítalo.`,
    twice: (name: string) => `Dos tramos se llaman ${name}. Los pilotos no podrían distinguirlos.`,
    oneEnd: (name: string) => `${name}: escribe el principio y el final, o ninguno de los dos.`,
    backwards: (name: string, from: string, to: string) =>
      `${name}: acaba a los ${to} m, que no es después de los ${from} m donde empieza.`,
    beyond: (name: string, to: string, length: string) =>
      `${name}: acaba a los ${to} m, pero la pista acaba a los ${length} m.`,
    gone: (name: string) =>
      `El tramo ${name} ya no tiene nombre en esta pista. Elige otra vez dónde fue y guarda después.`,
  },
  where: "¿Dónde fue?",
  whole: "toda la bajada",
  stretch: (name: string, from: string, to: string) => `${name}, de ${from} a ${to} m`,
  at: (section: string) => `Dónde: ${section}`,
};
