/** Spanish texts of the hand-off by codes. */
import type { handOffCodes as model } from "../english/hand-off-codes.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";

export const handOffCodes: Said<typeof model> = {
  send: {
    title: "Pasar por códigos",
    readFirst: "1. Lee lo que tiene el otro dispositivo",
    how: "En el otro dispositivo elige «Recibir por códigos». Muestra un código: apúntale con la cámara de este dispositivo.",
    showNext: "2. Deja que el otro dispositivo lea esto",
    answer: (entries: number) => `Para el otro dispositivo: ${plural(entries, "apunte nuevo", "apuntes nuevos")}.`,
    again: "Leer otro dispositivo",
    everything: "Mostrarlo todo",
    everythingHow: "Si este dispositivo no tiene cámara, puede mostrar todo lo que tiene; hacen falta más códigos.",
    everythingShown: "Todo lo de este dispositivo. Puede que el otro dispositivo ya tenga una parte.",
  },
  receive: {
    title: "Recibir por códigos",
    showFirst: "1. Deja que el otro dispositivo lea esto",
    how: "En el otro dispositivo elige «Pasar por códigos» y deja que su cámara lea este código.",
    nobody:
      "Nadie ha dicho todavía quién tiene este dispositivo. Los apuntes de los pilotos llegan cuando alguien lo diga.",
    readNext: "2. Lee la respuesta",
    readHow: "El otro dispositivo muestra su respuesta: apúntale con la cámara de este dispositivo.",
    next: "Ya lo ha leído: leer la respuesta",
    back: "Mostrar el código otra vez",
    onward: "Ahora al revés",
  },
  preparing: "Haciendo el código…",
  code: {
    one: "Código con todo",
    name: (number: number) => `Código ${number}`,
    several: (needed: number, duration: string) =>
      `Hacen falta unos ${needed} códigos, ${duration}. Da igual cuáles se lean o se pierdan.`,
    pause: "Pausa",
    play: "Seguir",
    next: "Código siguiente",
    seconds: (seconds: number) => plural(seconds, "segundo o más", "segundos o más"),
    minutes: (minutes: number) => plural(minutes, "minuto o más", "minutos o más"),
  },
  camera: {
    start: "Leer con la cámara",
    stop: "Parar la cámara",
    starting: "Encendiendo la cámara…",
    view: "Lo que ve la cámara",
    looking: "Todavía no se ve ningún código. Sujeta quieto el código, que llene casi toda la imagen.",
    progress: (read: number, needed: number) => `Leídos ${read} de unos ${needed} códigos`,
    insecure:
      "El navegador solo da la cámara a páginas que llegan por https o de este mismo equipo. Esta página no, así que pasa los datos por archivo.",
    none: "Este dispositivo no tiene una cámara que el navegador pueda usar. Pasa los datos por archivo.",
    refused:
      "No se ha permitido la cámara. Permítela para esta página en los ajustes del navegador, o pasa los datos por archivo.",
    failed:
      "La cámara no arranca; puede que la esté usando otro programa. Prueba otra vez, o pasa los datos por archivo.",
    noReader: "No se ha podido cargar el lector de códigos. Prueba otra vez, o pasa los datos por archivo.",
  },
};
