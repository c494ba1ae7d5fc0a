/** Spanish texts of why something is not handed over, or not taken in. */
import type { handOffProblems as model } from "../english/hand-off-problems.ts";
import type { Said } from "../spoken.ts";

export const handOffProblems: Said<typeof model> = {
  foreign: "Esto no es un archivo de Pitslate para pasar datos, o su principio está dañado.",
  newerVersion: {
    file: "Este archivo se hizo con una versión más nueva de Pitslate. Pon antes este dispositivo en esa versión y luego recibe el archivo.",
    codes:
      "Estos códigos se hicieron con una versión más nueva de Pitslate. Pon antes este dispositivo en esa versión y luego léelos.",
  },
  tooLarge: {
    device: "En este dispositivo hay más de lo que cabe en un archivo.",
    file: "Este archivo es más grande que cualquiera que este dispositivo pueda recibir.",
  },
  tooMuchForCodes: "Esto es más de lo que los códigos llevan en unos minutos. Pásalo por archivo.",
  damaged: {
    file: "Este archivo está dañado o cortado. Pídelo otra vez.",
    contents: "Este archivo no contiene lo que dice su primera línea. Pídelo otra vez.",
    codes: "Estos códigos no se pueden leer. Haz que el otro dispositivo responda de nuevo.",
  },
  unknownDocument: {
    file: "El archivo contiene algo que no es ni del equipo ni de un piloto.",
    codes: "Los códigos contienen algo que no es ni del equipo ni de un piloto.",
  },
  refusedDocument: (document: string, reason: string) => `Una parte (${document}) no se puede recibir. ${reason}`,
  reasons: {
    "too large": "Es más grande de lo que un dispositivo puede recibir.",
    undecodable: "Está dañada y no se puede leer.",
    removes: "Quita apuntes; solo se pueden añadir.",
    "not records": "Contiene algo que no es una lista de apuntes.",
    elsewhere: "Añade algo fuera de la lista de apuntes.",
    gap: "Se apoya en apuntes anteriores que no han llegado; hay que pasar antes esos.",
    tangled: "Pone demasiados apuntes en los mismos sitios; ordenarlos llevaría demasiado tiempo.",
    contradicts: "Contradice apuntes que hay aquí con los mismos números.",
    "bad record": "Tiene un apunte dañado.",
    "other version": "Tiene un apunte escrito por otra versión de Pitslate. Pon antes este dispositivo en esa versión.",
  },
  anotherTeam:
    "Este archivo es de otro equipo: nada de ese equipo se conoce en este dispositivo. No se ha recibido nada.",
  anotherDevice:
    "Estos códigos responden a otro dispositivo. Deja que el otro dispositivo lea lo que tiene este y que responda de nuevo.",
  answers: {
    damaged: "Lo que tiene el otro dispositivo no se puede leer. Haz que muestre su código de nuevo.",
    "another team": "El otro dispositivo tiene otro equipo. No se pasa nada.",
    "nothing here": "Este dispositivo todavía no tiene equipo, así que no hay nada que pasar.",
    "nothing new": "El otro dispositivo ya tiene todo lo que quiere de este.",
    differs:
      "Los dos dispositivos tienen apuntes distintos con los mismos números. Solo el servidor puede resolverlo: conecta los dos.",
  },
  codes: {
    unreadable: {
      foreign: "Este código no es de Pitslate para pasar datos.",
      damaged: "Este código no se ha leído bien; se deja fuera.",
      "newer version":
        "Este código se hizo con una versión más nueva de Pitslate. Pon antes este dispositivo en esa versión y luego léelo.",
    },
    unwanted: {
      holdings: "Este código dice lo que tiene el otro dispositivo. El otro dispositivo debe mostrar su respuesta.",
      answer: "Este código es una respuesta. El otro dispositivo debe mostrar lo que tiene.",
      file: "Este código es de todo lo que tiene el otro dispositivo. Debe mostrar solo qué tiene.",
    },
    anotherHandOff:
      "Este código es de otra tanda que el primero que se leyó; se deja fuera. Para leer esta, para la cámara y vuelve a encenderla.",
    noFit: "Los códigos no encajan entre sí. Se empieza a leer otra vez desde el primero.",
  },
};
