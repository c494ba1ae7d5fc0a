/** What the screens say of a refused row or file is what programs are told in English. */
import { expect, test } from "vitest";
import { filePlaceText, fileProblemText, rowRefusalText } from "#client/data/data-problem-text.ts";
import { describeFilePlace, type FilePlace, valuePlace } from "#core/exchange/file-place.ts";
import { describeFileProblem, type FileProblem } from "#core/exchange/file-problem.ts";
import { describeRowRefusal, type RowRefusal } from "#core/exchange/row-refusal.ts";

const line = { type: "line", first: 2, last: 2 } as const;
const places: readonly FilePlace[] = [
  line,
  { ...line, last: 9 },
  { ...line, of: { type: "rider", name: "alder" } },
  { ...line, last: 9, of: { type: "baseline", name: "alder/steep" } },
  { ...line, of: { type: "adjuster", name: "fork.rebound" } },
  { ...line, of: { type: "person", name: "Rowan Alder" } },
  valuePlace("horse"),
  valuePlace("rider", "alder"),
];

const refusals: readonly RowRefusal[] = [
  { type: "record", problem: { type: "misfit", subject: "rider:alder", sentence: "a bike has one rider" } },
  {
    type: "record",
    problem: {
      type: "bad value",
      subject: "rider:alder",
      fields: [
        { path: "name", sentence: "name: is missing", problem: { type: "missing" } },
        {
          path: "mass",
          sentence: "mass: 720 kg is above the allowed 200 kg",
          problem: { type: "out of range", side: "above", exclusive: false, given: 720, limit: 200, unit: "kg" },
        },
      ],
    },
  },
  { type: "limit", problem: { type: "no such adjuster", path: "fork.rebound", bike: "Quarry" } },
  { type: "given twice" },
  { type: "disputed here" },
  { type: "disputed in the file" },
  { type: "nothing to lean on", kind: "venue", key: "nowhere" },
  { type: "bike of another", bike: "alder-1", owner: "rush" },
  { type: "no setting's key" },
  { type: "adjuster twice", adjuster: "fork.rebound", baseline: "alder/steep" },
  { type: "line refused" },
  { type: "no settled baseline" },
  { type: "unknown kind", allowed: ["member", "rider"] },
  { type: "no object" },
  { type: "plate of another", plate: "11", rider: "Rowan Alder", said: "Dee Rush" },
  { type: "no rider", plate: "99", name: "Dee Rush" },
  { type: "no rider", plate: "", name: "" },
  { type: "several riders", plate: "", name: "Rush" },
  { type: "no session chosen", sessions: [] },
  { type: "unknown session", said: "Heat 7", sessions: ["p1", "race"] },
  { type: "no time", said: "DNF" },
  { type: "disputed run" },
];

const problems: readonly FileProblem[] = [
  { type: "not JSON" },
  { type: "other format", allowed: "pitslate team data" },
  { type: "other version", version: "2", allowed: 1 },
  { type: "no values" },
  { type: "too many values", most: 100 },
  { type: "too many rows", most: 100 },
  { type: "other table", allowed: [{ table: "riders", columns: ["rider", "name"] }] },
];

test.each(places.map((place) => [describeFilePlace(place), place] as const))("the place %s", (said, place) => {
  expect(filePlaceText(place)).toBe(said);
});

test.each(refusals.map((refusal) => [describeRowRefusal(refusal), refusal] as const))("%s", (said, refusal) => {
  expect(rowRefusalText(refusal)).toBe(said);
});

test.each(problems.map((problem) => [describeFileProblem(problem), problem] as const))("%s", (said, problem) => {
  expect(fileProblemText(problem)).toBe(said);
});

test("a part that belongs elsewhere is told by the names of the places", () => {
  const refusal = { type: "part of another place", part: "fork-1", place: "fork", given: "rear-tyre" } as const;
  expect(rowRefusalText(refusal)).toMatch(/fork-1.*Fork.*Rear tyre/);
});

test("all who have the same plate are named", () => {
  const refusal = { type: "plate of several", plate: "7", riders: ["Rowan Alder", "Dee Rush"] } as const;
  expect(rowRefusalText(refusal)).toMatch(/7.*Rowan Alder.*Dee Rush/);
});
