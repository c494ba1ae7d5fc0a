import { readdirSync, readFileSync } from "node:fs";
import { expect, it } from "vitest";

const pages = ["PROTOCOL.md", "UPSTREAM.md"].map((name) => readFileSync(`core/protocol/${name}`, "utf8"));
const ids = pages
  .flatMap((page) => [...page.matchAll(/^- \*\*(P\d+)\*\* /gm)].map((match) => match[1] ?? ""))
  .sort((left, right) => Number(left.slice(1)) - Number(right.slice(1)));
const folders = ["tests/sync-server", "tests/core/protocol", "tests/contract"];
const testNames = folders.flatMap((folder) =>
  readdirSync(folder)
    .filter((name) => name.endsWith(".test.ts"))
    .flatMap((name) => [...readFileSync(`${folder}/${name}`, "utf8").matchAll(/"((?:P\d+ )+[^"]*)"/g)])
    .map((match) => match[1] ?? ""),
);
const tested = new Set(testNames.flatMap((name) => name.match(/\bP\d+\b/g) ?? []));

it("numbers its sentences from P1 without a gap", () => {
  expect(ids).toEqual(Array.from({ length: ids.length }, (_, index) => `P${index + 1}`));
  expect(ids.length).toBeGreaterThan(20);
});

it("has a test for each of its sentences, and no test of a sentence that is gone", () => {
  expect([...tested].sort()).toEqual([...ids].sort());
});

it("keeps each of its two texts to two pages", () => {
  for (const page of pages) expect(page.split(/\s+/).length).toBeLessThan(1000);
});
