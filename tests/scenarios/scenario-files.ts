/** The scenarios of the repository, read through their gate. */
import { fileURLToPath } from "node:url";
import { loadScenario } from "#scenarios/gate/load-scenario.ts";
import { type PlayedScenario, playScenario } from "#scenarios/player/play-scenario.ts";
import type { Scenario } from "#scenarios/schema/scenario.ts";

export const scenarioNames = ["kestrel-ridge", "otter-hollow"] as const;
export type ScenarioName = (typeof scenarioNames)[number];

export function scenarioFile(name: ScenarioName): string {
  return fileURLToPath(new URL(`../../scenarios/${name}.json`, import.meta.url));
}

export function scenarioNamed(name: ScenarioName): Scenario {
  const parsed = loadScenario(scenarioFile(name));
  if (!parsed.ok) throw new Error(parsed.problems.join("\n"));
  return parsed.scenario;
}

/** Plays it; a step that cannot be done fails the test with its sentence. */
export function played(scenario: Scenario, seed?: number): PlayedScenario {
  const result = playScenario(scenario, seed);
  if (!result.ok) throw new Error(result.sentence);
  return result.played;
}

/** The scenario up to, and without, the first step that does `act`. */
export function upTo(scenario: Scenario, act: Scenario["steps"][number]["do"]): Scenario {
  const index = scenario.steps.findIndex((step) => step.do === act);
  if (index < 0) throw new Error(`The scenario has no step "${act}".`);
  return { ...scenario, steps: scenario.steps.slice(0, index) };
}
