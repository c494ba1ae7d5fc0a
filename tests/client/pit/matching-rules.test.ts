import { expect, test } from "vitest";
import { matchingChapters, ruleBook } from "#client/pit/matching-rules.ts";

const idsFor = (words: string) =>
  matchingChapters(ruleBook(), words).flatMap(({ entries }) => entries.map(({ id }) => id));

test("without words every rule is there", () => {
  expect(idsFor("  ")).toEqual(ruleBook().flatMap(({ entries }) => entries.map(({ id }) => id)));
});

test("all the words have to occur, in any order and case", () => {
  expect(idsFor("NUMB hands")).toEqual(["middle-harsh", "hands-go-numb"]);
  expect(idsFor("numb zebra")).toEqual([]);
});
