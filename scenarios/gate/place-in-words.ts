/** Where in a scenario something is wrong, in words. */
import { nameOfPath } from "#core/advice/adjuster-names.ts";
import { isAdjusterPath } from "#core/team/adjuster.ts";

/** A path into a scenario as people say it: "Steep baseline of alder, fork main pressure". */
export function placeInWords(path: readonly PropertyKey[], root: unknown): string {
  const steps = path.map(String);
  const [first, second, third] = steps;
  if (first === "steps" && second !== undefined) {
    return joined(stepInWords(Number(second), valueAt(root, steps.slice(0, 2))), steps.slice(2));
  }
  if (first === "devices" && second !== undefined) return joined(`Device ${Number(second) + 1}`, steps.slice(2));
  if (first === "team" && second === "baselines" && third !== undefined) {
    const [type, ...rest] = steps.slice(3);
    return type === undefined ? `Baselines of ${third}` : joined(baselineInWords(third, type), rest);
  }
  if (first === "team" && second !== undefined && Object.hasOwn(singular, second)) {
    return third === undefined ? `The team's ${second}` : joined(`${singular[second]} ${third}`, steps.slice(3));
  }
  if ((first === "sessions" || first === "conditions") && second !== undefined) {
    return joined(first === "sessions" ? `Session ${second}` : `Conditions of ${second}`, steps.slice(2));
  }
  return joined("The scenario", steps);
}

/** A baseline, as it is named at the head of a sentence. */
export function baselineInWords(riderId: string, type: string): string {
  return `${type.charAt(0).toUpperCase()}${type.slice(1)} baseline of ${riderId}`;
}

/** A step with its number from 1, what it does and when, as far as that can be read. */
export function stepInWords(index: number, step: unknown): string {
  const { do: act, at } = (typeof step === "object" && step !== null ? step : {}) as Record<string, unknown>;
  const said = [typeof act === "string" ? act : undefined, typeof at === "number" ? `at ${at} min` : undefined];
  const details = said.filter((word) => word !== undefined).join(" ");
  return details === "" ? `Step ${index + 1}` : `Step ${index + 1} (${details})`;
}

/** What a path leads to, or undefined. */
export function valueAt(root: unknown, path: readonly PropertyKey[]): unknown {
  let at: unknown = root;
  for (const step of path) {
    if (typeof at !== "object" || at === null || !Object.hasOwn(at, step)) return undefined;
    at = (at as Record<PropertyKey, unknown>)[step];
  }
  return at;
}

const singular: Readonly<Record<string, string>> = { members: "Member", riders: "Rider", bikes: "Bike", parts: "Part" };

function joined(head: string, steps: readonly string[]): string {
  const words = steps.flatMap((step, index) => {
    const isQuantityEnd = index === steps.length - 1 && (step === "value" || step === "unit");
    if (step === "values" || isQuantityEnd) return [];
    if (isAdjusterPath(step)) return nameOfPath(step);
    return /^\d+$/.test(step) ? `number ${Number(step) + 1}` : step;
  });
  return [head, ...words].join(", ");
}
