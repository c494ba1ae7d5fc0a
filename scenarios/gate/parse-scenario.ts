/** The one gate through which a scenario comes in: what passes it fits together, and can be played. */
import * as z from "zod/mini";
import { unworded } from "#core/ledger/field-problem.ts";
import { type Scenario, scenarioSchema } from "#scenarios/schema/scenario.ts";
import { programmeProblems } from "./check-steps.ts";
import { teamProblems } from "./check-team.ts";
import { fillDefaultSizes } from "./fill-default-sizes.ts";
import { issueSentence } from "./issue-sentence.ts";

/** A scenario, or everything that is wrong with it, one sentence each. */
export type ParsedScenario =
  | { readonly ok: true; readonly scenario: Scenario }
  | { readonly ok: false; readonly problems: readonly string[] };

/**
 * Reads a scenario from the text of its file. Adjusters may leave their sizes to the defaults of the trade. A team that is only named (`"team": "team.json"`) is asked for.
 * @param teamText gives the text of the named file, or undefined when there is none.
 */
export function parseScenario(
  text: string,
  teamText: (fileName: string) => string | undefined = () => undefined,
): ParsedScenario {
  const file = parseJson("The scenario", text);
  if (!file.ok) return file;
  const joined = withTeam(file.value, teamText);
  if (!joined.ok) return joined;
  const whole = { value: fillDefaultSizes(joined.value) };
  const parsed = z.safeParse(scenarioSchema, whole.value, { error: () => unworded });
  if (!parsed.success) {
    return { ok: false, problems: parsed.error.issues.map((issue) => issueSentence(issue, whole.value)) };
  }
  const problems = [...teamProblems(parsed.data.team), ...programmeProblems(parsed.data)];
  return problems.length > 0 ? { ok: false, problems } : { ok: true, scenario: parsed.data };
}

type Json =
  | { readonly ok: true; readonly value: unknown }
  | { readonly ok: false; readonly problems: readonly string[] };

function parseJson(what: string, text: string): Json {
  try {
    return { ok: true, value: JSON.parse(text) };
  } catch (error) {
    const reason = error instanceof Error ? error.message : String(error);
    return { ok: false, problems: [`${what} is not JSON (numbers are written like 62 or 62.5): ${reason}.`] };
  }
}

function withTeam(value: unknown, teamText: (fileName: string) => string | undefined): Json {
  if (typeof value !== "object" || value === null || !("team" in value) || typeof value.team !== "string") {
    return { ok: true, value };
  }
  const text = teamText(value.team);
  if (text === undefined) return { ok: false, problems: [`The team's file "${value.team}" is not there.`] };
  const team = parseJson(`The team's file "${value.team}"`, text);
  return team.ok ? { ok: true, value: { ...value, team: team.value } } : team;
}
