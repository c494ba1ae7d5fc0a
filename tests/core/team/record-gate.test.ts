import { describe, expect, test } from "vitest";
import { describeLedgerProblem } from "#core/ledger/write.ts";
import type { Adjuster } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { baseline, oneChamberFork, riderBike } from "#tests/builders/bike.ts";
import { ledgerOf } from "#tests/builders/hostile-team.ts";
import { recordIdOf } from "#tests/builders/hostile-value.ts";

/** Why the ledger sets a record with this value aside, in a sentence; undefined when it reads it. */
function refusal(subject: string, value: unknown): string | undefined {
  const ledger = ledgerOf([
    {
      version: 1,
      id: recordIdOf(1),
      subject,
      value,
      supersedes: [],
      by: "mia",
      device: "laptop",
      at: "2026-05-29T08:00:00Z",
    },
  ]);
  const [unreadable] = ledger.unreadable();
  return unreadable && describeLedgerProblem(unreadable.problem);
}

const member = { name: "Mia", role: "mechanic" };
const setting = (value: number, unit: string) => ({ quantity: { value, unit }, standing: "on the bike" });
const fork = (...adjusters: readonly Adjuster[]) => ({ ...oneChamberFork, adjusters });
const spacers: Adjuster = {
  kind: "volume-spacers",
  unit: "spacers",
  minimum: 0,
  maximum: 4,
  step: 1,
  felt: 1,
  large: 1,
};

describe("keys of the team's records", () => {
  test.each([
    ["member:mia", member],
    ["rider:alder", riderBike().rider],
    ["baseline:alder/wet", baseline()],
    ["setting:alder/alder-1/fork.main-pressure", setting(62, "psi")],
  ])("%s names something", (subject, value) => {
    expect(refusal(subject, value)).toBeUndefined();
  });

  test.each([
    ["member:a/b", member, "member"],
    ["rider:../alder", riderBike().rider, "rider"],
    ["rider:__proto__", riderBike().rider, "rider"],
    ["baseline:alder/constructor", baseline(), "rider/course type"],
    ["baseline:alder", baseline(), "rider/course type"],
    ["venue:ridge/x", { name: "Ridge", altitude: { value: 0, unit: "m" } }, "venue"],
    ["weekend:.", { name: "Kestrel", venue: "ridge", startsOn: "2026-05-29" }, "weekend"],
    ["setting:alder/alder-1/constructor.x", setting(1, "clicks"), "rider/bike/place.adjuster"],
    ["setting:alder/alder-1/fork.rebound/x", setting(1, "clicks"), "rider/bike/place.adjuster"],
    ["decision:alder/", { outcome: "adjusted" }, "rider/run"],
  ])("%s names nothing, so the record is set aside and says so", (subject, value, form) => {
    const key = subject.slice(subject.indexOf(":") + 1);
    expect(refusal(subject, value)).toBe(`${subject}: the key "${key}" is not of the form ${form}.`);
  });
});

describe("values that no part can be set to", () => {
  test.each([
    ["fork.main-pressure", 5, "clicks", "fork.main-pressure cannot be in clicks: it is measured in units of pressure"],
    ["fork.main-pressure", -15, "psi", "fork.main-pressure cannot be -15 psi: that is outside 0 psi to 500 psi"],
    ["fork.main-pressure", 1e308, "bar", "fork.main-pressure cannot be 1e+308 bar: that is outside 0 psi to 500 psi"],
    ["shock.spring-rate", 0, "N/mm", "shock.spring-rate cannot be 0 N/mm: that is outside 0.1 N/mm to 2000 N/mm"],
    ["fork.rebound", -1, "clicks", "fork.rebound cannot be -1 click: that is outside 0 clicks to 200 clicks"],
  ])("%s at %d %s is set aside, as a setting and in a baseline", (path, value, unit, sentence) => {
    const key = `setting:alder/alder-1/${path}`;
    expect(refusal(key, setting(value, unit))).toBe(`${key}: ${sentence}.`);
    const values = { [path]: { value, unit } } as SetupValues;
    expect(refusal("baseline:alder/wet", baseline(values))).toBe(`baseline:alder/wet: ${sentence}.`);
  });
});

describe("adjusters that nobody could turn through", () => {
  test.each([
    ["a range without end", { ...spacers, maximum: 1e308 }, "volume-spacers cannot be 1e+308 spacers"],
    ["a step of nothing", { ...spacers, step: 1e-300 }, "step: 1e-300 is below the allowed 0.001"],
    ["a large step without end", { ...spacers, large: 1e300 }, "an adjuster has at most 10000 steps"],
    [
      "more steps than it can be turned by",
      { ...spacers, maximum: 100, step: 0.001 },
      "an adjuster has at most 10000 steps",
    ],
    [
      "a pressure below ambient",
      { ...spacers, kind: "main-pressure", unit: "psi", minimum: -10 },
      "main-pressure cannot be -10 psi",
    ],
  ] as const)("%s is refused", (_what, adjuster, sentence) => {
    expect(refusal("part:fork-1", fork(adjuster))).toContain(sentence);
  });

  test("a part with the same adjuster twice is refused, since both would have one address", () => {
    expect(refusal("part:fork-1", fork(spacers, spacers))).toContain("a part has one adjuster of a kind at most");
    expect(refusal("part:fork-1", fork(spacers))).toBeUndefined();
  });
});
