/** Spanish texts of the pit: putting a setup on the bike, and going back. */
import type { pit as model } from "../english/pit.ts";
import type { Said } from "../spoken.ts";
import { plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

export const bench: Said<(typeof model)["bench"]> = {
  title: "Poner en la bici",
  order: "En este orden: respeta todos los límites en cada paso.",
  none: "No queda nada por poner de la hoja.",
  tick: "En la bici",
  tickLabel: (adjuster: string, value: string) => `${adjuster}, ${value}: en la bici`,
  all: "Todo está en la bici",
  ticked: (adjuster: string, value: string) => `En la bici: ${adjuster}, ${value}`,
  tickedAll: (count: number) => `En la bici: ${settingsText(count)}`,
  from: (value: string) => `desde ${value}`,
  fromUnknown: "antes no se sabía",
  blocked: "Ningún orden seguro llega a todo:",
  cautionsTitle: "Antes de tocar la bici",
  cautions: [
    "El gas está a presión y los muelles cargados: aparta la cara y quédate por debajo del máximo marcado en la pieza.",
    "Suelta toda la presión antes de abrir nada; no abras nunca un hidráulico.",
    "La primera bajada después de un cambio es lenta y corta.",
    "El manual del fabricante y el reglamento de la prueba mandan más que esta herramienta.",
  ],
  how: (count: number) => `Cómo: ${plural(count, "operación", "operaciones")}`,
  firstReading: (value: string, leak: string) =>
    `Primera lectura que debe salir: ${value}. Por debajo de ${leak} ha perdido aire.`,
  operations: {
    "unload the wheel": "Rueda en el aire, la pieza sin carga.",
    "clean around the valve": "Limpia alrededor de la válvula y después quita el tapón.",
    "connect the pump": "Pon la bomba.",
    "take the pump off fast": "Quita la bomba rápido: lo que silba es la manguera, no la cámara.",
    "cycle the part": "Comprime la pieza en todo su recorrido unas cuantas veces, al principio despacio.",
    "close the cap": "Pon el tapón.",
    "write it down": "Márcalo aquí.",
    "release all air": "Suelta todo el aire de todas las cámaras de la pieza.",
    "open the part": "Ábrela como dice el manual del fabricante.",
    "close the part": "Ciérrala con el par de apriete marcado.",
    "turn to closed": "Ciérralo del todo con suavidad.",
    "unload the spring": "Afloja la rosca hasta que el muelle quede suelto.",
  },
  setTo: (adjuster: string, value: string) => `${adjuster}: pon ${value}.`,
  checkAgain: (value: string) => `Pon la bomba otra vez: debería marcar ${value}.`,
  spacersTo: (value: string) => `Cambia a ${value}.`,
  springTo: (value: string) => `Monta el muelle de ${value}.`,
  collarTo: (value: string) => `Gira la rosca hasta ${value} de precarga.`,
  clicksTo: (value: string) => `Ábrelo ${value}, contando.`,
  stepCautions: {
    "gas under pressure": "Gas a presión: quédate por debajo del máximo marcado en la pieza.",
    "release all air before opening": "Suelta todo el aire de todas las cámaras antes de abrir la pieza.",
    "spring under load": "El muelle está cargado: quítale la carga antes de girar o sacar nada.",
    "count clicks from closed": "Ciérralo del todo con suavidad y después cuenta los clics hacia abierto.",
    "lower of tyre and rim maximum":
      "Quédate por debajo del menor de los dos máximos marcados en la cubierta y en la llanta.",
  },
};

export const goBack: Said<(typeof model)["goBack"]> = {
  title: "Volver atrás, toda la bici",
  weekend: "Volver al reglaje del fin de semana",
  baseline: "Volver a la base",
  steps: (count: number) => `Cambia ${settingsText(count)}, en este orden`,
  already: "Ya está en la bici.",
  leftOut: (adjusters: string) => `Queda fuera, por discrepancia: ${adjusters}.`,
  doneWeekend: (count: number) => `De vuelta al reglaje del fin de semana: ${settingsText(count)} en la bici`,
  doneBaseline: (count: number) => `De vuelta a la base: ${settingsText(count)} en la bici`,
  adjuster: (adjuster: string, value: string) => `${adjuster}: de vuelta a ${value}`,
};
