/** German names of adjusters in a sentence, and of symptoms. */
import type { Symptom } from "#core/advice/symptom.ts";
import { type AdjusterPath, parseAdjusterPath } from "#core/team/adjuster.ts";
import { common } from "./common.ts";
import { trackside } from "./trackside.ts";

/** "Gabel-Zugstufe", "Druck Vorderreifen": without an article, since its gender changes with the adjuster. */
export function adjusterName(path: AdjusterPath): string {
  const address = parseAdjusterPath(path);
  if (!address) return path;
  const place = common.places[address.place];
  const kind = common.adjusters[address.kind];
  return address.kind === "tyre-pressure" ? `${kind} ${place}` : `${place}-${kind}`;
}

/** As they are listed after the end that they are of: "Vorne: Sag über Ziel, rutscht". */
export const symptomNames: Readonly<Record<Symptom, string>> = {
  ...trackside.noticed,
  "sag above target": "Sag über Ziel",
  "sag below target": "Sag unter Ziel",
  "sag on target": "Sag im Ziel",
  "all travel used too easily": "Federweg zu leicht ausgenutzt",
  "travel left over": "Federweg übrig",
  "softer than the other end": "weicher als das andere Ende",
  "firmer than the other end": "härter als das andere Ende",
  "confidence low": "Vertrauen gering",
  "start harsh": "Anfang hart",
  "start too soft": "Anfang zu weich",
  "middle harsh": "Mitte hart",
  "middle dives": "Mitte taucht ab",
  "end hits hard": "Ende schlägt hart an",
  "end never reached": "Ende nie erreicht",
  "returns too slowly": "federt zu langsam aus",
  "returns too fast": "federt zu schnell aus",
  slides: "rutscht",
};
