import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { replayCommand } from "#scenarios/replay-command.ts";
import { scenarioFile, scenarioNames } from "./scenario-files.ts";

describe.each(scenarioNames)("a replay of %s", (name) => {
  const file = scenarioFile(name);

  it.each([[[]], [["--json"]]])("prints the same, byte for byte, when it is run twice with %j", (options) => {
    const first = replayCommand([file, ...options]);
    expect(first.stderr).toBe("");
    expect(first.code).toBe(0);
    expect(first.stdout.length).toBeGreaterThan(10_000);
    expect(replayCommand([file, ...options])).toEqual(first);
  });

  it("prints the same for another seed, which only changes ids and the order of delivery", () => {
    const own = replayCommand([file, "--json"]).stdout;
    for (const seed of ["1", "2", "4294967295"]) {
      expect(replayCommand([file, "--json", "--seed", seed]).stdout, `seed ${seed}`).toBe(own);
    }
  });

  it("prints JSON that holds every rider's sheet, changelog and adjustments", () => {
    const report = JSON.parse(replayCommand([file, "--json"]).stdout);
    expect(report.riders).toHaveLength(8);
    for (const rider of report.riders) {
      expect(rider.sheet.rows.length, rider.name).toBeGreaterThanOrEqual(10);
      expect(rider.changelog.length, rider.name).toBeGreaterThanOrEqual(10);
    }
  });
});

describe("the command's arguments", () => {
  const folder = mkdtempSync(join(tmpdir(), "replay-"));
  afterAll(() => rmSync(folder, { recursive: true }));
  const notJson = join(folder, "not.json");
  writeFileSync(notJson, '{ "format": NaN }');

  it.each([
    ["no file", [], "Name one scenario file; --help lists the options."],
    ["two files", ["a.json", "b.json"], "Name one scenario file; --help lists the options."],
    ["a file that is not there", ["gone.json"], 'The scenario\'s file "gone.json" cannot be read.'],
    [
      "a seed that is no number",
      ["a.json", "--seed", "seven"],
      '--seed is "seven"; it must be a whole number from 1 to 4294967295.',
    ],
    ["a seed of nothing", ["a.json", "--seed", "0"], '--seed is "0"; it must be a whole number from 1 to 4294967295.'],
    ["an unknown option", ["--fast"], "--help lists the options."],
    ["a file that is not JSON", [notJson], "The scenario is not JSON (numbers are written like 62 or 62.5)"],
  ])("%s gives one sentence and code 2, and prints no report", (_what, args, sentence) => {
    const output = replayCommand(args);
    expect(output.stderr).toContain(sentence);
    expect(output.stderr.trimEnd().split("\n")).toHaveLength(1);
    expect(output).toMatchObject({ code: 2, stdout: "" });
  });

  it("--help prints how it is used", () => {
    expect(replayCommand(["--help"])).toMatchObject({ code: 0, stderr: "" });
    expect(replayCommand(["--help"]).stdout).toContain("--seed <number>");
  });
});
