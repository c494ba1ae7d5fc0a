import { nameOfPath } from "#core/advice/adjuster-names.ts";
import { checkValue, describeLimitProblem, type LimitProblem } from "#core/advice/limits.ts";
import { unitsOf } from "#core/quantity/unit.ts";
import { type AdjusterPath, dimensionOfKind, parseAdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { mountedAdjusters, type RiderBike } from "#core/team/roster.ts";

/** One sentence for each value that the bike cannot have, beginning with where it stands. */
export function limitSentences(place: string, mounted: RiderBike, values: SetupValues): readonly string[] {
  const paths = Object.keys(values) as AdjusterPath[];
  const chambersTold = new Set<string>();
  return paths.flatMap((path) => {
    const value = values[path];
    const problem = value && checkValue(mounted, path, value, values);
    if (!problem) return [];
    if (problem.type === "chambers too close") {
      // Both chambers break the same limit: once is enough.
      const part = path.split(".", 1)[0] ?? path;
      if (chambersTold.has(part)) return [];
      chambersTold.add(part);
    }
    return [`${place}, ${lowerFirst(worded(problem, mounted))}`];
  });
}

/** A sentence when the bike has no adjuster of that name. */
export function missingAdjusterSentence(place: string, mounted: RiderBike, path: AdjusterPath): string | undefined {
  const known = mountedAdjusters(mounted.parts).map((found) => found.path);
  if (known.includes(path)) return undefined;
  return `${place}, ${nameOfPath(path)}: the bike ${mounted.bikeId} has no such adjuster; it has ${known.join(", ")}.`;
}

function worded(problem: LimitProblem, mounted: RiderBike): string {
  if (problem.type === "no such adjuster") {
    return missingAdjusterSentence("", mounted, problem.path)?.slice(2) ?? describeLimitProblem(problem);
  }
  if (problem.type !== "wrong unit") return describeLimitProblem(problem);
  const kind = parseAdjusterPath(problem.path)?.kind;
  const allowed = kind ? unitsOf(dimensionOfKind(kind)).join(", ") : problem.allowed;
  return `${nameOfPath(problem.path)}: "${problem.value.unit}" is no unit of ${problem.allowed}; allowed: ${allowed}.`;
}

function lowerFirst(text: string): string {
  return text.charAt(0).toLowerCase() + text.slice(1);
}
