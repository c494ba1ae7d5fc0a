/** Each thing that can be wrong in a scenario, and the one sentence it gives: what, where, and what is allowed. */
import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { parseScenario } from "#scenarios/gate/parse-scenario.ts";
import { scenarioFile } from "./scenario-files.ts";

// A scenario as it came from its file, free to be spoiled.
// biome-ignore lint/suspicious/noExplicitAny: the point of these tests is that nothing is known of its shape
type Loose = any;

const scenarioText = readFileSync(scenarioFile("kestrel-ridge"), "utf8");
const teamText = readFileSync(new URL("../../scenarios/team.json", import.meta.url), "utf8");
const riderNames = "alder, linden, hazel, sorrel, bramble, juniper, thistle, willow";

function problemsOf(spoil: (scenario: Loose) => void): readonly string[] {
  const scenario: Loose = { ...JSON.parse(scenarioText), team: JSON.parse(teamText) };
  spoil(scenario);
  const parsed = parseScenario(JSON.stringify(scenario));
  expect(parsed).not.toHaveProperty("scenario");
  return parsed.ok ? [] : parsed.problems;
}

const steep = (scenario: Loose, rider = "alder") => scenario.team.baselines[rider].steep.values;
const stepThat = (scenario: Loose, act: string) => scenario.steps.find((step: Loose) => step.do === act);

describe("a scenario", () => {
  it("passes the gate as it is", () => {
    expect(parseScenario(scenarioText, (name) => (name === "team.json" ? teamText : undefined)).ok).toBe(true);
  });

  it("may leave the sizes of an adjuster to the defaults of the trade, and keeps those that it names", () => {
    const scenario: Loose = { ...JSON.parse(scenarioText), team: JSON.parse(teamText) };
    const adjusters = scenario.team.parts["alder-fork"].adjusters;
    const main = adjusters.find((adjuster: Loose) => adjuster.kind === "main-pressure");
    for (const size of ["step", "felt", "large"]) delete main[size];
    const secondary = adjusters.find((adjuster: Loose) => adjuster.kind === "secondary-pressure");
    secondary.large = 8;
    const parsed = parseScenario(JSON.stringify(scenario));
    const filled = parsed.ok ? (parsed.scenario.team.parts["alder-fork"]?.adjusters ?? []) : [];
    expect(filled.find(({ kind }) => kind === "main-pressure")).toMatchObject({ step: 0.5, felt: 2, large: 5 });
    expect(filled.find(({ kind }) => kind === "secondary-pressure")).toMatchObject({ large: 8 });
  });

  it.each<[string, (scenario: Loose) => void, string]>([
    [
      "a number that is no number",
      (s) => {
        steep(s)["fork.main-pressure"].value = "62psi";
      },
      'Steep baseline of alder, fork main pressure: "62psi" is not a number; allowed is a plain number with its unit beside it, like { "value": 62, "unit": "psi" }.',
    ],
    [
      "a number that JSON has turned to nothing",
      (s) => {
        steep(s)["fork.main-pressure"].value = null;
      },
      'Steep baseline of alder, fork main pressure: null is not a number; allowed is a plain number with its unit beside it, like { "value": 62, "unit": "psi" }.',
    ],
    [
      "a quantity in one text",
      (s) => {
        steep(s)["fork.main-pressure"] = "62 psi";
      },
      'Steep baseline of alder, fork main pressure: "62 psi" is not a quantity; allowed is a number with its unit, like { "value": 62, "unit": "psi" }.',
    ],
    [
      "a unit that is none",
      (s) => {
        steep(s)["fork.main-pressure"].unit = "PSI";
      },
      'Steep baseline of alder, fork main pressure: "PSI" is no unit; allowed: psi, bar, kPa, °C, °F, m, mm, in, kg, lb, °, ml, mm², N/mm, lbf/in, clicks, turns, spacers.',
    ],
    [
      "a unit of something else",
      (s) => {
        steep(s)["fork.main-pressure"].unit = "clicks";
      },
      'Steep baseline of alder, fork main pressure: "clicks" is no unit of pressure; allowed: psi, bar, kPa.',
    ],
    [
      "a mass in a unit of pressure",
      (s) => {
        s.team.riders.alder.mass.unit = "psi";
      },
      'Rider alder, mass: "psi" is no unit of mass; allowed: kg, lb.',
    ],
    [
      "a pressure above the part's maximum",
      (s) => {
        steep(s)["fork.main-pressure"].value = 131;
      },
      "Steep baseline of alder, fork main pressure: 131 psi is outside the part's range of 45 psi to 130 psi.",
    ],
    [
      "a pressure above the part's maximum in another unit",
      (s) => {
        steep(s)["fork.main-pressure"] = { value: 9, unit: "bar" };
      },
      "Steep baseline of alder, fork main pressure: 9 bar is outside the part's range of 45 psi to 130 psi.",
    ],
    [
      "a tyre above what is marked on the rim",
      (s) => {
        s.team.parts["alder-rear-tyre"].geometry.rimMarkedMaximum.value = 25;
      },
      "Jumpy baseline of alder, rear tyre pressure: 25.5 psi is above the 25 psi that is marked on the rim.",
    ],
    [
      "a value between two steps",
      (s) => {
        steep(s)["fork.main-pressure"].value = 80.3;
      },
      "Steep baseline of alder, fork main pressure: 80.3 psi cannot be set; the adjuster moves in steps of 0.5 psi.",
    ],
    [
      "a secondary chamber that is not above the main one",
      (s) => {
        steep(s)["fork.secondary-pressure"].value = 82;
      },
      "Steep baseline of alder, fork main pressure: the secondary chamber (82 psi) must stay at least 5 psi above the main chamber (80 psi).",
    ],
    [
      "an adjuster that the bike does not have",
      (s) => {
        steep(s, "hazel")["fork.secondary-pressure"] = { value: 150, unit: "psi" };
      },
      "Steep baseline of hazel, fork secondary pressure: the bike hazel-bike has no such adjuster; it has fork.main-pressure, fork.volume-spacers, fork.rebound, fork.low-speed-compression, shock.main-pressure, shock.volume-spacers, shock.rebound, shock.low-speed-compression, front-tyre.tyre-pressure, rear-tyre.tyre-pressure.",
    ],
    [
      "an adjuster that does not exist",
      (s) => {
        steep(s)["fork.main"] = { value: 62, unit: "psi" };
      },
      'Steep baseline of alder: "fork.main" is no adjuster; an adjuster is named by its place and kind, like fork.main-pressure.',
    ],
    [
      "a baseline of an unknown rider",
      (s) => {
        s.team.baselines.aldr = s.team.baselines.alder;
        delete s.team.baselines.alder;
      },
      `Baselines of aldr: there is no rider "aldr"; there are ${riderNames}.`,
    ],
    [
      "a baseline for an unknown sort of course",
      (s) => {
        s.team.baselines.alder.muddy = s.team.baselines.alder.wet;
      },
      "Baselines of alder: has fields that are not allowed: muddy.",
    ],
    [
      "a rider on an unknown bike",
      (s) => {
        s.team.riders.alder.bike = "old-bike";
      },
      'Rider alder: there is no bike "old-bike"; there are alder-bike, alder-spare-bike, linden-bike, hazel-bike, sorrel-bike, bramble-bike, juniper-bike, thistle-bike, willow-bike.',
    ],
    [
      "a rider on the bike of another",
      (s) => {
        s.team.riders.alder.bike = "linden-bike";
        delete s.team.baselines.alder;
      },
      "Rider alder: the bike linden-bike is that of linden.",
    ],
    [
      "a part at the wrong end",
      (s) => {
        s.team.bikes["alder-bike"].parts["front-tyre"] = "alder-rear-tyre";
        for (const b of Object.values<Loose>(s.team.baselines.alder)) delete b.values["front-tyre.tyre-pressure"];
      },
      "Bike alder-bike: the part alder-rear-tyre belongs at the rear-tyre, not at the front-tyre.",
    ],
    [
      "a part of an unknown sort",
      (s) => {
        s.team.parts["alder-fork"].archetype = "magnetic";
      },
      'Part alder-fork, archetype: "magnetic" is not one of "air", "two-chamber air", "coil", "tyre".',
    ],
    [
      "an adjuster of a part in a unit of something else",
      (s) => {
        s.team.parts["alder-fork"].adjusters[2].unit = "psi";
      },
      "Part alder-fork, adjusters, number 3: rebound cannot be in psi: it is measured in units of clicks.",
    ],
    [
      "a device of an unknown member",
      (s) => {
        s.devices[0].member = "nobody";
      },
      'Device 1: there is no member "nobody"; there are larch, rush, heather, alder, linden, hazel, sorrel, bramble, juniper, thistle, willow.',
    ],
    [
      "a step on an unknown device",
      (s) => {
        s.steps[0].device = "laptop";
      },
      'Step 1 (enter course at 0 min): there is no device "laptop"; there are pit-laptop, bench-tablet, manager-tablet, phone-alder, phone-linden, phone-hazel, phone-sorrel, phone-bramble, phone-juniper, phone-thistle, phone-willow.',
    ],
    [
      "a step for an unknown rider",
      (s) => {
        stepThat(s, "put on the bike").rider = "aldr";
      },
      `Step 6 (put on the bike at 12 min): there is no rider "aldr"; there are ${riderNames}.`,
    ],
    [
      "a step for an unknown session",
      (s) => {
        stepThat(s, "enter conditions").session = "practice-9";
      },
      'Step 2 (enter conditions at 2 min): there is no session "practice-9"; there are practice-1, practice-2, qualifying, race.',
    ],
    [
      "a step that nobody can do",
      (s) => {
        s.steps[0] = { at: 0, device: "pit-laptop", do: "dance" };
      },
      'Step 1 (dance at 0 min), do: "dance" is not one of "enter course", "enter conditions", "put on the bike", "back to weekend setup", "back to baseline", "log a run", "take an adjustment", "leave as it is", "set by hand", "change on the hill", "confirm", "undo", "resolve dispute", "approve baseline", "cut network", "reconnect".',
    ],
    [
      "a step that sets too much pressure",
      (s) => {
        stepThat(s, "set by hand").values["fork.main-pressure"].value = 140;
      },
      "Step 29 (set by hand at 168 min), fork main pressure: 140 psi is outside the part's range of 45 psi to 130 psi.",
    ],
    [
      "a step that confirms an adjuster which the bike does not have",
      (s) => {
        stepThat(s, "confirm").adjuster = "shock.main-pressure";
      },
      "Step 39 (confirm at 226 min), shock main pressure: the bike bramble-bike has no such adjuster; it has fork.main-pressure, fork.secondary-pressure, fork.rebound, fork.low-speed-compression, fork.high-speed-compression, shock.spring-rate, shock.preload, shock.rebound, shock.low-speed-compression, shock.high-speed-compression, front-tyre.tyre-pressure, rear-tyre.tyre-pressure.",
    ],
    [
      "a step by a rule that there is not",
      (s) => {
        stepThat(s, "take an adjustment").rule = "wish";
      },
      'Step 21 (take an adjustment at 142 min): there is no rule "wish"; there are',
    ],
    [
      "a step before the one above it",
      (s) => {
        s.steps[2].at = 1;
      },
      "Step 3 (enter conditions at 1 min): it comes before the step above it, which is at 2 min.",
    ],
    [
      "a rider's phone that decides",
      (s) => {
        stepThat(s, "leave as it is").device = "phone-juniper";
      },
      "Step 26 (leave as it is at 157 min): phone-juniper is the device of a rider, on which one can only log own runs and own changes on the hill.",
    ],
    [
      "a network that is cut twice",
      (s) => {
        s.steps.splice(1, 0, ...[0, 1].map(() => ({ at: 1, device: "pit-laptop", do: "cut network" })));
      },
      "Step 3 (cut network at 1 min): the network of pit-laptop is cut already.",
    ],
    [
      "a feeling that is no word of ours",
      (s) => {
        stepThat(s, "log a run").run.front.middle = "plush";
      },
      'Step 14 (log a run at 118 min), run, front, middle: "plush" is not one of "harsh", "good", "dives".',
    ],
    [
      "a course that does not add up",
      (s) => {
        s.steps[0].course.mix.wet = 0.4;
      },
      "Step 1 (enter course at 0 min), course, mix: the parts steep, jumpy and wet must add up to 1, not 1.4.",
    ],
    [
      "a field that there is not",
      (s) => {
        s.weather = "fine";
      },
      "The scenario: has fields that are not allowed: weather.",
    ],
    [
      "a start that is no time",
      (s) => {
        s.startsAt = "Friday";
      },
      "The scenario, startsAt: a start is written in UTC, like 2026-06-12T06:30:00Z.",
    ],
    [
      "a seed of nothing",
      (s) => {
        s.seed = 0;
      },
      "The scenario, seed: 0 is below the allowed 1.",
    ],
  ])("with %s is refused in one sentence", (_what, spoil, sentence) => {
    const problems = problemsOf(spoil);
    expect(problems[0]).toContain(sentence);
    expect(problems).toHaveLength(1);
  });

  it("with several mistakes is told of all of them", () => {
    const problems = problemsOf((s) => {
      steep(s)["fork.main-pressure"].value = 131;
      s.devices[0].member = "nobody";
      s.steps[0].device = "laptop";
    });
    expect(problems).toHaveLength(3);
  });

  it("whose team's file is missing says so", () => {
    expect(parseScenario(scenarioText)).toEqual({
      ok: false,
      problems: ['The team\'s file "team.json" is not there.'],
    });
  });

  it("with NaN for a number is no JSON, and says how numbers are written", () => {
    const parsed = parseScenario(scenarioText.replace('"seed": 20260612', '"seed": NaN'));
    expect(parsed.ok ? [] : parsed.problems).toEqual([
      expect.stringContaining("The scenario is not JSON (numbers are written like 62 or 62.5)"),
    ]);
  });
});
