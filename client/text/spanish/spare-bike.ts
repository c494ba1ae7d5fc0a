/** Spanish texts of a rider's bikes: which is ridden, a setup copied to another, and a part moved between them. */
import type { Place } from "#core/team/place.ts";
import type { spareBike as model } from "../english/spare-bike.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";
import { chosen, plural } from "./plural.ts";
import { settingsText } from "./settings-count.ts";

/** What is fitted at a place, with its article. */
const the: Record<Place, string> = {
  fork: "la horquilla",
  shock: "el amortiguador",
  "front-tyre": "la cubierta delantera",
  "rear-tyre": "la cubierta trasera",
};

function firstCapital(text: string): string {
  return text.charAt(0).toUpperCase() + text.slice(1);
}

export const spareBike: Said<typeof model> = {
  title: (rider: string) => `Bicis de ${rider}`,
  link: (bike: string, count: number) => (count > 1 ? `Con ${bike}, 1 de ${count} bicis` : `Con ${bike}`),
  backToBench: "Al banco",
  ridden: "Con qué bici baja",
  riddenAbout:
    "La hoja de reglajes, los consejos, las bajadas y el móvil del piloto van por la bici con la que baja. Dilo en cuanto cambie de bici.",
  isRidden: "Baja con esta",
  ride: (bike: string) => `Desde ahora: ${bike}`,
  rides: (rider: string, bike: string) => `${rider} baja ahora con ${bike}`,
  firstRide: "La primera bajada con otra bici, o después de cambiar una pieza, es lenta y corta.",
  noPart: "ninguna pieza",
  inDispute: "con discrepancia",
  part: (place: Place, name: string) => `${common.places[place]}: ${name}`,
  disputes: {
    title: (place: Place, bike: string) => `${common.places[place]}: ¿cuál lleva ${bike}?`,
    about: "Se han dicho cosas distintas. Mira la bici y después di cuál lleva. Hasta entonces, aquí no lleva ninguna.",
    says: (part: string, who: string, when: string) => `${part}: montada por ${who}, ${when}`,
    entered: (part: string) => `${part}: apuntada con esta bici`,
    isOn: (part: string) => `Lleva ${part}`,
    isElsewhere: (part: string) => `${part} no está en ninguna bici`,
    settled: (part: string, bike: string) => `Mirada la bici: ${bike} lleva ${part}`,
    settledAside: (part: string) => `Mirada la bici: ${part} no está en ninguna bici`,
    line: (place: Place, bike: string) => `${common.places[place]}, cuál lleva ${bike}: se han dicho cosas distintas`,
  },
  copy: {
    title: "Copiar el reglaje a otra bici",
    from: "De",
    to: "A",
    bike: (bike: string, rider: string) => `${bike} (${rider})`,
    isTheSame: "Elige dos bicis distintas.",
    atTheBench: "Presiones como se leen en el banco de la sesión elegida.",
    asTyped: "Presiones como se escribieron: faltan por apuntar las condiciones de la sesión.",
    differencesTitle: "Qué es distinto en la otra bici",
    noDifferences: "Las dos bicis tienen piezas con los mismos datos.",
    adjuster: "Ajuste",
    value: "Se pondría",
    now: "Lo que lleva ahora",
    outcome: "Qué pasa con él",
    unknown: "no se sabe",
    inDispute: "con discrepancia",
    outcomes: {
      copied: "Se puede poner.",
      same: "Ya está así.",
      "no adjuster": "Queda fuera: la otra bici no tiene este ajuste.",
      "only there": "Se queda como está: la primera bici no tiene este ajuste.",
      "in dispute": "Queda fuera: tiene una discrepancia. Mira la primera bici.",
      "not known": "Queda fuera: no se sabe cómo está en la primera bici.",
    },
    refused: (why: string) => `Rechazado. ${why}`,
    reported: "Lo dice el piloto; ningún mecánico lo ha visto.",
    measure: {
      sag: "El mismo número es aquí otro muelle: mide el sag.",
      damping: "Los mismos clics pueden frenar aquí de otra manera: pruébalo en una bajada corta.",
    },
    sameSag: (adjuster: string, value: string) =>
      `${adjuster}: con unos ${value} el sag sería la misma parte de la carrera, calculado con los datos de las dos bicis. No se copia. Mide el sag antes de fiarte.`,
    range: (from: string, to: string) => `Margen ${from}, allí ${to}.`,
    span: (low: string, high: string) => `de ${low} a ${high}`,
    step: (from: string, to: string) => `Pasos de ${from}, allí de ${to}.`,
    perClick: (from: string, to: string) => `Amortiguación por clic ${from}, allí ${to}.`,
    percent: (value: string) => `${value} %`,
    notMeasured: "sin medir",
    order: "Ponlo en este orden y después di que está hecho: así se respetan todos los límites en cada paso.",
    take: (count: number, bike: string) => `${settingsText(count)} en ${bike}: está hecho`,
    nothing: "No hay nada que poner en ella.",
    leave: "No se apunta nada hasta que digas que está hecho.",
    done: (count: number, from: string, to: string) => `Copiado de ${from}: ${settingsText(count)} en ${to}`,
    why: (bike: string) => `Copiado de ${bike}.`,
  },
  differences: {
    noPart: (place: Place, bike: string) => `${bike} no lleva ${common.places[place].toLowerCase()}.`,
    names: (place: Place, from: string, to: string) => `${firstCapital(the[place])} es ${to}, no ${from}.`,
    archetypes: (place: Place, from: string, to: string) => `${firstCapital(the[place])} tiene ${to}, no ${from}.`,
    archetype: {
      air: "un muelle de aire con una cámara positiva",
      "two-chamber air": "un muelle de aire con cámara principal y secundaria",
      coil: "un muelle helicoidal",
      tyre: "una cubierta",
    },
    dimension: (what: string, from: string, to: string) => `${what}: ${to}, no ${from}.`,
    ofPlace: (place: Place, what: string) => `${what} ${place === "shock" ? "del amortiguador" : `de ${the[place]}`}`,
    leverage: (from: string, to: string) => `Relación de palanca del amortiguador: ${to}, no ${from}.`,
    unknown: "no se sabe",
    dimensions: {
      stroke: "Recorrido",
      positiveArea: "Área positiva",
      negativeArea: "Área negativa",
      positiveVolume: "Volumen positivo",
      negativeVolume: "Volumen negativo",
      equalisingStroke: "Carrera en la que se igualan las cámaras",
      secondaryVolume: "Volumen de la secundaria",
      spacerVolume: "Volumen de un espaciador",
      threadPitch: "Paso de la rosca de precarga",
      tyreMarkedMaximum: "Máximo marcado en la cubierta",
      rimMarkedMaximum: "Máximo marcado en la llanta",
      forkAngle: "Ángulo de la horquilla",
      sprungMass: "Masa suspendida de la bici",
      rearWheelTravel: "Recorrido de la rueda trasera",
      riderMass: "Masa del piloto",
    },
  },
  move: {
    title: "Una pieza: su historial y cambiarla de bici",
    part: "Pieza",
    option: (part: string, bike: string) => `${part}, en ${bike}`,
    optionAside: (part: string) => `${part}, en ninguna bici`,
    to: "Pasarla a",
    choose: "Elige a dónde",
    aside: "A ninguna bici, guardada",
    swapLegend: (part: string) => `En su sitio ya hay una pieza: ${part}`,
    swap: { swap: "Se cambian de sitio", aside: "Esa se guarda" },
    airLegend: "El aire de lo que se mueve",
    air: { kept: "sigue dentro", released: "se ha soltado" },
    needsPlace: "Elige a dónde va la pieza.",
    needsAir: "Di si el aire sigue dentro de la pieza.",
    goesAlong:
      "Las horas rodadas, los mantenimientos y los ajustes de la pieza van con ella. Lo que nadie sabe de ella tampoco se sabe en su nueva bici; una cubierta desmontada no tiene presión conocida.",
    cautions: [
      "Suelta todo el aire antes de abrir una pieza. No aflojes nunca una pieza con el muelle cargado.",
      "Suelta el aire de una cubierta antes de sacarla de la llanta.",
      "Aprieta con los pares del fabricante, y que un mecánico cualificado mire las piezas gastadas o dañadas.",
    ],
    save: "Está cambiada",
    done: (part: string, bike: string) => `Cambiada: ${part}, ahora en ${bike}`,
    doneAside: (part: string) => `Cambiada: ${part}, ahora guardada`,
    why: (part: string) => `Ha venido con la pieza: ${part}.`,
    whyGone: (part: string) => `Ya no se sabe: se movió una pieza, ${part}.`,
    problems: {
      unknownPart: "La pieza ya no se conoce.",
      unknownBike: "La bici ya no se conoce.",
      samePlace: "La pieza ya está ahí.",
      notThere: "La pieza no está donde estaba: alguien la ha movido o dice otra cosa. Mira las bicis.",
      placeInDispute: (place: Place, bike: string) =>
        `${common.places[place]} de ${bike}: hay una discrepancia sobre cuál lleva. Resuélvela antes.`,
      settingsInDispute: (bike: string, adjusters: string) =>
        `En ${bike} hay discrepancia en: ${adjusters}. Mira la bici y resuélvela antes.`,
    },
    historyTitle: (part: string) => `Historial de ${part}`,
    stay: (bike: string, from: string | undefined, until: string | undefined) =>
      until === undefined
        ? from === undefined
          ? `${bike}, desde que se conoce`
          : `${bike}, desde ${from}`
        : from === undefined
          ? `${bike}, hasta ${until}`
          : `${bike}, desde ${from} hasta ${until}`,
    noBike: "En ninguna bici",
    placeInDispute: "Hay una discrepancia sobre dónde está: su historial se verá otra vez cuando esté resuelta.",
    hours: (work: string, hours: string) => `${work}: ${hours} h desde la última vez`,
    noChanges: "Aquí no se apuntó ningún ajuste suyo.",
    changes: (count: number) => `${settingsText(count)} ${chosen(count, "apuntado", "apuntados")}`,
    change: (adjuster: string, value: string, who: string, when: string) => `${adjuster}: ${value}, ${who}, ${when}`,
    more: (count: number) => `y ${plural(count, "anterior", "anteriores")}`,
  },
  undo: {
    moved: (part: string) => `cambio de sitio de ${part}`,
    rides: (bike: string) => `baja con ${bike}`,
    copied: (count: number) => `copia de ${settingsText(count)}`,
  },
};
