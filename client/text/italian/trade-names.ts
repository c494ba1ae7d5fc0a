/** Italian names of adjusters in a sentence, and of symptoms. */
import type { Symptom } from "#core/advice/symptom.ts";
import { type AdjusterPath, parseAdjusterPath } from "#core/team/adjuster.ts";
import type { Place } from "#core/team/place.ts";
import { common } from "./common.ts";
import { trackside } from "./trackside.ts";

const ofPlace: Record<Place, string> = {
  fork: "forcella",
  shock: "ammortizzatore",
  "front-tyre": "gomma anteriore",
  "rear-tyre": "gomma posteriore",
};

/** "Ritorno forcella", as it is said at the bench: without an article, since its gender changes with the adjuster. */
export function adjusterName(path: AdjusterPath): string {
  const address = parseAdjusterPath(path);
  if (!address) return path;
  const { kind, place } = address;
  return kind === "spring-rate" ? `Durezza molla ${ofPlace[place]}` : `${common.adjusters[kind]} ${ofPlace[place]}`;
}

/** As they are listed after the end that they are of: "Anteriore: sag sopra l’obiettivo, scivola". */
export const symptomNames: Readonly<Record<Symptom, string>> = {
  ...trackside.noticed,
  "sag above target": "sag sopra l’obiettivo",
  "sag below target": "sag sotto l’obiettivo",
  "sag on target": "sag nell’obiettivo",
  "all travel used too easily": "escursione usata tutta troppo facilmente",
  "travel left over": "escursione avanzata",
  "softer than the other end": "più morbido dell’altra estremità",
  "firmer than the other end": "più sostenuto dell’altra estremità",
  "confidence low": "fiducia bassa",
  "start harsh": "inizio duro",
  "start too soft": "inizio troppo morbido",
  "middle harsh": "metà corsa dura",
  "middle dives": "affonda a metà corsa",
  "end hits hard": "fine corsa che picchia forte",
  "end never reached": "fine della corsa mai raggiunta",
  "returns too slowly": "ritorno troppo lento",
  "returns too fast": "ritorno troppo veloce",
  slides: "scivola",
};
