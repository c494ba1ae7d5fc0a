import { expect, test } from "vitest";
import { readSource, sourceFiles } from "./source-files.ts";

const SOURCE_LINES = 300;
const TEST_LINES = 500;

function tooLong(folders: readonly string[], limit: number): readonly string[] {
  return folders
    .flatMap(sourceFiles)
    .map((path) => ({ path, lines: readSource(path).split("\n").length - 1 }))
    .filter(({ lines }) => lines > limit)
    .map(({ path, lines }) => `${path} has ${lines} lines; allowed are ${limit}`);
}

test("no source file is above its size: a long file has a second subject in it", () => {
  expect(tooLong(["core", "client", "sync-server", "scenarios"], SOURCE_LINES)).toEqual([]);
});

test("no test file is above its size", () => {
  expect(tooLong(["tests"], TEST_LINES)).toEqual([]);
});
