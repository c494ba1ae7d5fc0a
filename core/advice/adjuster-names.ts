/** What adjusters are called in a sentence. */
import { type AdjusterKind, type AdjusterPath, parseAdjusterPath } from "#core/team/adjuster.ts";
import type { Place } from "#core/team/place.ts";

const placeNames: Record<Place, string> = {
  fork: "fork",
  shock: "shock",
  "front-tyre": "front tyre",
  "rear-tyre": "rear tyre",
};

const kindNames: Record<AdjusterKind, string> = {
  "main-pressure": "main pressure",
  "secondary-pressure": "secondary pressure",
  "volume-spacers": "volume spacers",
  "spring-rate": "spring rate",
  preload: "preload",
  rebound: "rebound",
  "low-speed-compression": "low-speed compression",
  "high-speed-compression": "high-speed compression",
  "tyre-pressure": "pressure",
};

/** The field's name of an adjuster: "main pressure". */
export function nameOfKind(kind: AdjusterKind): string {
  return kindNames[kind];
}

/** The full name of an adjuster on a bike: "fork main pressure". */
export function nameOfPath(path: AdjusterPath): string {
  const address = parseAdjusterPath(path);
  return address ? `${placeNames[address.place]} ${kindNames[address.kind]}` : path;
}

/** The same name where a line begins with it: "Fork main pressure". */
export function adjusterName(path: AdjusterPath): string {
  const name = nameOfPath(path);
  return name.charAt(0).toUpperCase() + name.slice(1);
}
