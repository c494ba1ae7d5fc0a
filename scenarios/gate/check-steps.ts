/** What the schema cannot see of the programme and of the steps. */
import { feedbackRules } from "#core/advice/feedback-rules/rule-table.ts";
import type { Scenario } from "#scenarios/schema/scenario.ts";
import type { Step } from "#scenarios/schema/step.ts";
import { unknownName } from "./check-team.ts";
import { limitSentences, missingAdjusterSentence } from "./limit-sentence.ts";
import { mountedIn, own } from "./mounted.ts";
import { stepInWords } from "./place-in-words.ts";

/** One sentence for each thing in the programme, the devices and the steps that does not fit together. */
export function programmeProblems(scenario: Scenario): readonly string[] {
  const sessions = Object.keys(scenario.sessions);
  const conditions = Object.keys(scenario.conditions ?? {})
    .filter((id) => !sessions.includes(id))
    .map((id) => `Conditions of ${id}: ${unknownName("session", id, sessions)}`);
  return [...conditions, ...deviceProblems(scenario), ...stepProblems(scenario)];
}

function deviceProblems({ devices, team }: Scenario): readonly string[] {
  return devices.flatMap(({ id, member }, index) => [
    ...(devices.findIndex((other) => other.id === id) < index ? [`Device ${index + 1}: "${id}" is there twice.`] : []),
    ...(own(team.members, member)
      ? []
      : [`Device ${index + 1}: ${unknownName("member", member, Object.keys(team.members))}`]),
  ]);
}

function stepProblems(scenario: Scenario): readonly string[] {
  const cut = new Set<string>();
  let clock = 0;
  return scenario.steps.flatMap((step, index) => {
    const place = stepInWords(index, step);
    const problems: string[] = [];
    if (step.at < clock) problems.push(`${place}: it comes before the step above it, which is at ${clock} min.`);
    clock = Math.max(clock, step.at);
    if (step.do === "cut network") {
      if (cut.has(step.device)) problems.push(`${place}: the network of ${step.device} is cut already.`);
      cut.add(step.device);
    }
    if (step.do === "reconnect" && !cut.delete(step.device)) {
      problems.push(`${place}: the network of ${step.device} is not cut.`);
    }
    return [...problems, ...whoAndWhere(scenario, step, place), ...whatIsSet(scenario, step, place)];
  });
}

function whoAndWhere({ devices, team, sessions }: Scenario, step: Step, place: string): readonly string[] {
  const problems: string[] = [];
  const device = devices.find(({ id }) => id === step.device);
  if (!device) {
    const known = devices.map(({ id }) => id);
    problems.push(`${place}: ${unknownName("device", step.device, known)}`);
  }
  if ("rider" in step && !own(team.riders, step.rider)) {
    problems.push(`${place}: ${unknownName("rider", step.rider, Object.keys(team.riders))}`);
  }
  if ("session" in step && !own(sessions, step.session)) {
    problems.push(`${place}: ${unknownName("session", step.session, Object.keys(sessions))}`);
  }
  const member = device && own(team.members, device.member);
  if (member?.role === "rider" && !isForRiders(step, member.rider)) {
    problems.push(
      `${place}: ${step.device} is the device of a rider, on which one can only log own runs and own changes on the hill.`,
    );
  }
  return problems;
}

function isForRiders(step: Step, riderId: string | undefined): boolean {
  switch (step.do) {
    case "cut network":
    case "reconnect":
      return true;
    case "log a run":
    case "change on the hill":
      return step.rider === riderId;
    default:
      return false;
  }
}

function whatIsSet({ team }: Scenario, step: Step, place: string): readonly string[] {
  const mounted = "rider" in step ? mountedIn(team, step.rider) : undefined;
  if (!mounted) return [];
  switch (step.do) {
    case "set by hand":
    case "change on the hill":
      return Object.keys(step.values).length === 0
        ? [`${place}: it names no value to set.`]
        : limitSentences(place, mounted, step.values);
    case "resolve dispute":
      return limitSentences(place, mounted, { [step.adjuster]: step.found });
    case "put on the bike":
    case "back to weekend setup":
    case "back to baseline":
      return (step.adjusters ?? []).flatMap((path) => missingAdjusterSentence(place, mounted, path) ?? []);
    case "confirm":
    case "undo": {
      const sentence = step.adjuster && missingAdjusterSentence(place, mounted, step.adjuster);
      return sentence ? [sentence] : [];
    }
    case "take an adjustment":
      return ruleProblems(place, step.rule);
    default:
      return [];
  }
}

function ruleProblems(place: string, rule: string | undefined): readonly string[] {
  const known = feedbackRules.map(({ id }) => id);
  return rule === undefined || known.includes(rule) ? [] : [`${place}: ${unknownName("rule", rule, known)}`];
}
