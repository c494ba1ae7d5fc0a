/** German texts of a rider's bikes: which is ridden, a setup copied to another, and a part moved between them. */
import type { Place } from "#core/team/place.ts";
import type { spareBike as model } from "../english/spare-bike.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";
import { settingsText } from "./settings-count.ts";

/** What is fitted at a place, with its article. */
const the: Record<Place, string> = {
  fork: "Die Gabel",
  shock: "Der Dämpfer",
  "front-tyre": "Der Vorderreifen",
  "rear-tyre": "Der Hinterreifen",
};

const ofThe: Record<Place, string> = {
  fork: "der Gabel",
  shock: "des Dämpfers",
  "front-tyre": "des Vorderreifens",
  "rear-tyre": "des Hinterreifens",
};

function which(place: Place): string {
  return `${place === "fork" ? "Welche" : "Welcher"} ${common.places[place]}`;
}

export const spareBike: Said<typeof model> = {
  title: (rider: string) => `Bikes von ${rider}`,
  link: (bike: string, count: number) => (count > 1 ? `Mit ${bike}, 1 von ${count} Bikes` : `Mit ${bike}`),
  backToBench: "Zur Werkbank",
  ridden: "Welches Bike gefahren wird",
  riddenAbout:
    "Setup-Blatt, Ratschläge, Läufe und das Handy des Fahrers gehen nach dem Bike, das gefahren wird. Sag es, sobald der Fahrer das Bike wechselt.",
  isRidden: "Wird jetzt gefahren",
  ride: (bike: string) => `Ab jetzt: ${bike}`,
  rides: (rider: string, bike: string) => `${rider} fährt jetzt ${bike}`,
  firstRide: "Die erste Fahrt auf einem anderen Bike oder mit einem getauschten Teil ist langsam und kurz.",
  noPart: "kein Teil",
  inDispute: "strittig",
  part: (place: Place, name: string) => `${common.places[place]}: ${name}`,
  disputes: {
    title: (place: Place, bike: string) => `${which(place)} ist an ${bike}?`,
    about: "Es wurde Verschiedenes gesagt. Schau ans Bike, dann sag, was stimmt. Bis dahin ist hier keins daran.",
    says: (part: string, who: string, when: string) => `${part}: angebaut von ${who}, ${when}`,
    entered: (part: string) => `${part}: mit diesem Bike eingetragen`,
    isOn: (part: string) => `${part} ist daran`,
    isElsewhere: (part: string) => `${part} ist an keinem Bike`,
    settled: (part: string, bike: string) => `Am Bike nachgeschaut: ${part} ist an ${bike}`,
    settledAside: (part: string) => `Am Bike nachgeschaut: ${part} ist an keinem Bike`,
    line: (place: Place, bike: string) => `${which(place)} an ${bike} ist: Es wurde Verschiedenes gesagt`,
  },
  copy: {
    title: "Setup auf ein anderes Bike kopieren",
    from: "Von",
    to: "Auf",
    bike: (bike: string, rider: string) => `${bike} (${rider})`,
    isTheSame: "Wähl zwei verschiedene Bikes.",
    atTheBench: "Drücke, wie sie an der Werkbank der gewählten Session stehen.",
    asTyped: "Drücke, wie sie eingetippt wurden: Die Bedingungen der Session sind nicht eingetragen.",
    differencesTitle: "Was am anderen Bike anders ist",
    noDifferences: "Die Teile beider Bikes haben dieselben Daten.",
    adjuster: "Einstellpunkt",
    value: "Würde eingestellt",
    now: "Jetzt daran",
    outcome: "Was daraus wird",
    unknown: "unbekannt",
    inDispute: "strittig",
    outcomes: {
      copied: "Lässt sich einstellen.",
      same: "Ist schon so.",
      "no adjuster": "Fällt weg: Das andere Bike hat diesen Einstellpunkt nicht.",
      "only there": "Bleibt, wie es ist: Das erste Bike hat diesen Einstellpunkt nicht.",
      "in dispute": "Fällt weg: Es ist strittig. Schau ans erste Bike.",
      "not known": "Fällt weg: Am ersten Bike ist es unbekannt.",
    },
    refused: (why: string) => `Abgelehnt. ${why}`,
    reported: "Der Fahrer hat es gesagt; kein Mechaniker hat es gesehen.",
    measure: {
      sag: "Dieselbe Zahl ist hier eine andere Feder: Miss den Sag.",
      damping: "Dieselben Klicks dämpfen hier vielleicht anders: Probier es in einem kurzen Lauf.",
    },
    sameSag: (adjuster: string, value: string) =>
      `${adjuster}: Mit etwa ${value} wäre der Sag derselbe Anteil des Hubs, aus den Daten beider Bikes berechnet. Kopiert wird das nicht. Miss den Sag, bevor du dich darauf verlässt.`,
    range: (from: string, to: string) => `Bereich ${from}, dort ${to}.`,
    span: (low: string, high: string) => `${low} bis ${high}`,
    step: (from: string, to: string) => `Schritte von ${from}, dort ${to}.`,
    perClick: (from: string, to: string) => `Dämpfung je Klick ${from}, dort ${to}.`,
    percent: (value: string) => `${value} %`,
    notMeasured: "nicht gemessen",
    order: "Stell es in dieser Reihenfolge ein, dann sag, dass es getan ist: So hält jeder Schritt jede Grenze ein.",
    take: (count: number, bike: string) => `${settingsText(count)} an ${bike}: ist getan`,
    nothing: "Daran ist nichts einzustellen.",
    leave: "Eingetragen wird erst, wenn du sagst, dass es getan ist.",
    done: (count: number, from: string, to: string) => `Von ${from} kopiert: ${settingsText(count)} an ${to}`,
    why: (bike: string) => `Von ${bike} kopiert.`,
  },
  differences: {
    noPart: (place: Place, bike: string) =>
      `${bike} hat ${place === "fork" ? "keine" : "keinen"} ${common.places[place]}.`,
    names: (place: Place, from: string, to: string) => `${the[place]} ist ${to}, nicht ${from}.`,
    archetypes: (place: Place, from: string, to: string) => `${the[place]} hat ${to}, nicht ${from}.`,
    archetype: {
      air: "eine Luftfeder mit einer Positivkammer",
      "two-chamber air": "eine Luftfeder mit Haupt- und Zweitkammer",
      coil: "eine Stahlfeder",
      tyre: "einen Reifen",
    },
    dimension: (what: string, from: string, to: string) => `${what}: ${to}, nicht ${from}.`,
    ofPlace: (place: Place, what: string) => `${what} ${ofThe[place]}`,
    leverage: (from: string, to: string) => `Übersetzung des Dämpfers: ${to}, nicht ${from}.`,
    unknown: "unbekannt",
    dimensions: {
      stroke: "Federweg",
      positiveArea: "Positivfläche",
      negativeArea: "Negativfläche",
      positiveVolume: "Positivvolumen",
      negativeVolume: "Negativvolumen",
      equalisingStroke: "Hub, bei dem sich die Kammern ausgleichen",
      secondaryVolume: "Volumen der Zweitkammer",
      spacerVolume: "Volumen eines Volumenspacers",
      threadPitch: "Gewindesteigung der Vorspannung",
      tyreMarkedMaximum: "Maximum, das auf dem Reifen steht",
      rimMarkedMaximum: "Maximum, das auf der Felge steht",
      forkAngle: "Winkel der Gabel",
      sprungMass: "Gefederte Masse des Bikes",
      rearWheelTravel: "Federweg des Hinterrads",
      riderMass: "Masse des Fahrers",
    },
  },
  move: {
    title: "Ein Teil: seine Geschichte, und umbauen",
    part: "Teil",
    option: (part: string, bike: string) => `${part}, an ${bike}`,
    optionAside: (part: string) => `${part}, an keinem Bike`,
    to: "Umbauen an",
    choose: "Wähl, wohin",
    aside: "Kein Bike, kommt zur Seite",
    swapLegend: (part: string) => `An seinem Platz ist schon ein Teil: ${part}`,
    swap: { swap: "Die beiden tauschen den Platz", aside: "Das andere kommt zur Seite" },
    airLegend: "Die Luft in dem, was umgebaut wird",
    air: { kept: "blieb drin", released: "wurde abgelassen" },
    needsPlace: "Wähl, wohin das Teil kommt.",
    needsAir: "Sag, ob die Luft im Teil geblieben ist.",
    goesAlong:
      "Betriebsstunden, Services und die Einstellungen am Teil gehen mit. Was niemand davon weiß, ist auch am neuen Bike unbekannt; ein abgezogener Reifen hat keinen bekannten Druck.",
    cautions: [
      "Lass alle Luft ab, bevor ein Teil geöffnet wird. Löse nie ein Teil, dessen Feder unter Last steht.",
      "Lass die Luft aus dem Reifen, bevor er von der Felge kommt.",
      "Zieh mit den Drehmomenten des Herstellers an, und lass verschlissene oder beschädigte Teile von einem qualifizierten Mechaniker anschauen.",
    ],
    save: "Ist umgebaut",
    done: (part: string, bike: string) => `Umgebaut: ${part} an ${bike}`,
    doneAside: (part: string) => `Umgebaut: ${part} liegt zur Seite`,
    why: (part: string) => `Mit dem Teil gekommen: ${part}.`,
    whyGone: (part: string) => `Nicht mehr bekannt: ${part} wurde umgebaut.`,
    problems: {
      unknownPart: "Das Teil ist nicht mehr bekannt.",
      unknownBike: "Das Bike ist nicht mehr bekannt.",
      samePlace: "Das Teil ist schon dort.",
      notThere: "Das Teil ist nicht, wo es war: Jemand hat es umgebaut oder sagt etwas anderes. Schau an die Bikes.",
      placeInDispute: (place: Place, bike: string) => `${which(place)} an ${bike} ist, ist strittig. Klär das zuerst.`,
      settingsInDispute: (bike: string, adjusters: string) =>
        `An ${bike} ist strittig: ${adjusters}. Schau ans Bike und klär das zuerst.`,
    },
    historyTitle: (part: string) => `Geschichte: ${part}`,
    stay: (bike: string, from: string | undefined, until: string | undefined) =>
      until === undefined
        ? from === undefined
          ? `${bike}, seit es bekannt ist`
          : `${bike}, seit ${from}`
        : from === undefined
          ? `${bike}, bis ${until}`
          : `${bike}, von ${from} bis ${until}`,
    noBike: "An keinem Bike",
    placeInDispute: "Wo es ist, ist strittig: Seine Geschichte steht wieder da, wenn das geklärt ist.",
    hours: (work: string, hours: string) => `${work}: ${hours} h seit dem letzten Mal`,
    noChanges: "Hier wurde dafür keine Einstellung eingetragen.",
    changes: (count: number) => `${settingsText(count)} gemacht`,
    change: (adjuster: string, value: string, who: string, when: string) => `${adjuster} ${value}, ${who}, ${when}`,
    more: (count: number) => `und ${count} frühere`,
  },
  undo: {
    moved: (part: string) => `${part} umgebaut`,
    rides: (bike: string) => `fährt ${bike}`,
    copied: (count: number) => `${settingsText(count)} kopiert`,
  },
};
