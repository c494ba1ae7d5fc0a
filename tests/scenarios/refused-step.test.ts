/** Steps that pass the gate and still cannot be done, because of what is on the bike or known by then. */
import { describe, expect, it } from "vitest";
import { playScenario } from "#scenarios/player/play-scenario.ts";
import type { Scenario } from "#scenarios/schema/scenario.ts";
import type { Step } from "#scenarios/schema/step.ts";
import { scenarioNamed, upTo } from "./scenario-files.ts";

const upToUndo = upTo(scenarioNamed("kestrel-ridge"), "undo");
const at = 165;
const device = "pit-laptop";
const session = "practice-1";

function refusalOf(scenario: Scenario, step: Step): string {
  const result = playScenario({ ...scenario, steps: [...scenario.steps, step] });
  if (result.ok) result.played.close();
  return result.ok ? "done" : result.sentence;
}

describe("a step that cannot be done", () => {
  it.each<[string, Step, string]>([
    [
      "a secondary chamber below the main one that is on the bike",
      {
        at,
        device,
        do: "set by hand",
        rider: "alder",
        session,
        values: { "fork.secondary-pressure": { value: 82, unit: "psi" } },
      },
      "on pit-laptop for alder: Fork secondary pressure: the secondary chamber (82 psi) must stay at least 5 psi above the main chamber (78 psi).",
    ],
    [
      "an adjustment that the run does not call for",
      { at, device, do: "take an adjustment", rider: "juniper", rule: "front-slides" },
      "There is no such adjustment for the rider's last run; there are: none.",
    ],
    [
      "an answer to a run that nobody rode",
      { at, device, do: "leave as it is", rider: "sorrel" },
      "no run of the rider's",
    ],
    [
      "a report that was not made",
      { at, device, do: "confirm", rider: "alder", adjuster: "shock.rebound" },
      "There is no reported change to confirm.",
    ],
    [
      "a dispute that there is not",
      {
        at,
        device,
        do: "resolve dispute",
        rider: "alder",
        adjuster: "shock.rebound",
        found: { value: 8, unit: "clicks" },
      },
      "shock.rebound is not in dispute on this device.",
    ],
    [
      "a sheet that is on the bike already",
      { at, device, do: "put on the bike", rider: "sorrel", session },
      "There is nothing to set",
    ],
  ])("%s stops the replay with a sentence that names the step", (_what, step, sentence) => {
    const refusal = refusalOf(upToUndo, step);
    expect(refusal).toContain(sentence);
    expect(refusal).toContain(`Step ${upToUndo.steps.length + 1} (${step.do} at 165 min), on pit-laptop`);
  });

  it("asks for the course first", () => {
    const bare = { ...upToUndo, steps: [] };
    expect(refusalOf(bare, { at, device, do: "put on the bike", rider: "alder", session })).toContain(
      "The course of Kestrel Ridge Downhill is not entered yet",
    );
  });

  it("is a baseline from settings in dispute or only reported", () => {
    const approve: Step = {
      at: 215,
      device: "manager-tablet",
      do: "approve baseline",
      rider: "hazel",
      session,
      courseType: "steep",
    };
    const kestrel = scenarioNamed("kestrel-ridge");
    expect(refusalOf(upTo(kestrel, "resolve dispute"), { ...approve, at: 217 })).toContain("is in dispute");
    expect(refusalOf(upTo(kestrel, "confirm"), { ...approve, at: 223, rider: "bramble" })).toContain(
      "was reported by the rider",
    );
  });
});
