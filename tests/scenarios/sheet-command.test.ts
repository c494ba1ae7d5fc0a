/** What `npm run sheet` says to what is wrong; that it prints is tested in a browser. */
import { existsSync, mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { printRequest } from "#scenarios/printing/print-request.ts";
import { sheetCommand } from "#scenarios/printing/sheet-command.ts";
import { scenarioFile } from "./scenario-files.ts";

const file = scenarioFile("kestrel-ridge");
const folder = mkdtempSync(join(tmpdir(), "pitslate-sheet-"));
const output = join(folder, "sheet.pdf");

afterAll(() => rmSync(folder, { recursive: true, force: true }));

describe("a wrong call is refused with what is allowed, and nothing is written", () => {
  it.each([
    ["no file", ["--rider", "alder", "-o", output], "Name one scenario file"],
    ["a file that is not there", ["nowhere.json", "--rider", "alder", "-o", output], '"nowhere.json" cannot be read'],
    ["nothing to print", [file, "-o", output], "one of --rider <id>, --team and --weekend"],
    ["two things to print", [file, "--team", "--weekend", "-o", output], "one of --rider"],
    ["no output", [file, "--rider", "alder"], "-o sheet.pdf"],
    ["a folder that is not there", [file, "--team", "-o", join(folder, "none", "x.pdf")], "is not there"],
    ["a folder in the place of a file", [file, "--team", "-o", folder], "is a folder"],
    ["an unknown rider", [file, "--rider", "nobody", "-o", output], "there are: alder, linden"],
    ["an unknown session", [file, "--rider", "alder", "--session", "x", "-o", output], "there are: practice-1"],
    ["an unknown paper", [file, "--rider", "alder", "--paper", "A3", "-o", output], "allowed: A5, A4, Letter"],
    ["an unknown option", [file, "--colour", "-o", output], "--help"],
  ])("%s", async (_, args, sentence) => {
    const { code, stdout, stderr } = await sheetCommand(args);
    expect(code).toBe(2);
    expect(stdout).toBe("");
    expect(stderr).toContain(sentence);
    expect(existsSync(output)).toBe(false);
  });
});

describe("what is printed", () => {
  it("is the last session with conditions unless another is named, by a mechanic, from all entries", () => {
    const args = { file, page: { of: "rider", riderId: "alder" }, session: undefined, paper: "A5", output } as const;
    const wanted = printRequest(args);
    const other = printRequest({ ...args, session: "practice-2" });
    if (!wanted.ok || !other.ok) throw new Error("The scenario's own rider is known.");
    expect(wanted.request.address).toBe("/print/rider/alder?weekend=kestrel-ridge-2026&paper=A5&session=race");
    expect(other.request.address).toContain("session=practice-2");
    expect(wanted.request.member).toBe("larch");
    expect(wanted.request.documents.map(({ name }) => name)).toContain("rider/willow/2026");
    expect(wanted.request.entries).toBeGreaterThan(200);
  });

  it("prints its help without a file", async () => {
    expect((await sheetCommand(["--help"])).stdout).toContain("npm run sheet -- <file>");
  });
});
