/** Italian texts of what is different on another bike. */
import type { Place } from "#core/team/place.ts";
import type { spareBike as english } from "../english/spare-bike.ts";
import type { Said } from "../spoken.ts";
import { common } from "./common.ts";

const ofThePlace: Record<Place, string> = {
  fork: "della forcella",
  shock: "dell’ammortizzatore",
  "front-tyre": "della gomma anteriore",
  "rear-tyre": "della gomma posteriore",
};

export const differences: Said<typeof english.differences> = {
  noPart: (place: Place, bike: string) => `${common.places[place]}: ${bike} non ne ha.`,
  names: (place: Place, from: string, to: string) => `${common.places[place]}: ${to}, non ${from}.`,
  archetypes: (place: Place, from: string, to: string) => `${common.places[place]}: ha ${to}, non ${from}.`,
  archetype: {
    air: "una molla ad aria con una sola camera positiva",
    "two-chamber air": "una molla ad aria con camera principale e camera secondaria",
    coil: "una molla elicoidale",
    tyre: "una gomma",
  },
  dimension: (what: string, from: string, to: string) => `${what}: ${to}, non ${from}.`,
  ofPlace: (place: Place, what: string) => `${what} ${ofThePlace[place]}`,
  leverage: (from: string, to: string) => `Rapporto di leva dell’ammortizzatore: ${to}, non ${from}.`,
  unknown: "ignoto",
  dimensions: {
    stroke: "Corsa",
    positiveArea: "Area positiva",
    negativeArea: "Area negativa",
    positiveVolume: "Volume positivo",
    negativeVolume: "Volume negativo",
    equalisingStroke: "Punto della corsa in cui le camere si equilibrano",
    secondaryVolume: "Volume secondario",
    spacerVolume: "Volume di uno spaziatore",
    threadPitch: "Passo della ghiera del precarico",
    tyreMarkedMaximum: "Massimo indicato sulla gomma",
    rimMarkedMaximum: "Massimo indicato sul cerchio",
    forkAngle: "Angolo della forcella",
    sprungMass: "Massa sospesa della bici",
    rearWheelTravel: "Escursione della ruota posteriore",
    riderMass: "Massa del pilota",
  },
};
