import { describe, expect, test } from "vitest";
import { describeLedgerProblem } from "#core/ledger/write.ts";
import { courseKind, runKind } from "#core/weekend/record-kinds.ts";
import { teamLedger } from "#tests/builders/team-ledger.ts";

const course = { mix: { steep: 1, jumpy: 0, wet: 0 }, altitude: { value: 300, unit: "m" } } as const;
const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: {}, rear: {} } as const;

/** What the ledger says to a course with these fields; empty when it takes it. */
function sentenceFor(fields: object): string {
  const result = teamLedger()
    .writerFor("mia")
    .set(courseKind, "kestrel", { ...course, ...fields });
  return result.ok ? "" : describeLedgerProblem(result.problem);
}

const points = (count: number) => Array.from({ length: count }, (_, index) => [index * 10, 500 - index] as const);
const rocks = { id: "rocks", name: "Rock garden", from: 300, to: 420 };

describe("the profile of a course", () => {
  test("is taken with 2 to 200 points, and a course without one as ever", () => {
    expect(sentenceFor({})).toBe("");
    expect(sentenceFor({ profile: { points: points(2) } })).toBe("");
    expect(sentenceFor({ profile: { points: points(200) } })).toBe("");
  });

  test.each([
    ["one point", points(1), "profile"],
    ["201 points", points(201), "profile"],
    ["a start elsewhere than at 0 m", [[1, 500], ...points(3).slice(1)], "a profile begins at 0 m"],
    ["distances that do not rise", [...points(3), [20, 480]], "the distances of a profile rise"],
    [
      "points so close that a gradient would be no number",
      [
        [0, 9000],
        [Number.MIN_VALUE, 0],
      ],
      "rise by 1 m or more",
    ],
    ["a height that no ground has", [[0, 9001], ...points(2).slice(1)], "profile"],
    ["a length that no course has", [...points(2), [50_001, 0]], "at most 50000 m"],
    ["a distance that is no number", [...points(2), [Number.NaN, 0]], "profile"],
  ])("is refused with %s", (_what, wrong, words) => {
    expect(sentenceFor({ profile: { points: wrong } })).toContain(words);
  });
});

describe("the sections of a course", () => {
  test("are taken with both ends or none, also where they overlap", () => {
    const others = [
      { id: "finish", name: "Finish" },
      { id: "all", name: "Woods", from: 0, to: 900 },
    ];
    expect(sentenceFor({ sections: [rocks, ...others] })).toBe("");
  });

  test.each([
    ["one end alone", [{ id: "a", name: "A", from: 3 }], "a section has both its ends or none"],
    ["an end before the beginning", [{ ...rocks, to: 300 }], "a section begins before it ends"],
    ["a name twice", [rocks, { ...rocks, id: "other" }], "no two sections have the same name"],
    ["an id twice", [rocks, { ...rocks, name: "Other" }], "no two sections have the same id"],
    ["no name", [{ ...rocks, name: "" }], "a name has 1 to 80 characters"],
    ["25 of them", Array.from({ length: 25 }, (_, n) => ({ id: `s${n}`, name: `S ${n}` })), "sections"],
  ])("are refused with %s", (_what, sections, words) => {
    expect(sentenceFor({ sections })).toContain(words);
  });

  test("are kept by a run as they were named when it was ridden", () => {
    const team = teamLedger();
    const alder = team.writerFor("alder");
    expect(alder.set(runKind, "alder/r1", { ...run, section: rocks }).ok).toBe(true);
    expect(team.ledger.current(runKind, "alder/r1")).toMatchObject({ value: { section: rocks } });
    expect(alder.set(runKind, "alder/r2", { ...run, section: { ...rocks, to: 1 } }).ok).toBe(false);
  });
});
