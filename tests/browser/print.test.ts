/** Pages on paper: the right size, all of it there, and nothing that only a background or a grey would show. */
import { spawnSync } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { type OpenPage, openPage } from "#scenarios/printing/print-page.ts";
import { type PrintRequest, printRequest } from "#scenarios/printing/print-request.ts";
import type { SheetPage } from "#scenarios/printing/sheet-arguments.ts";
import { scenarioFile } from "#tests/scenarios/scenario-files.ts";
import { root } from "#tests/source-files.ts";
import { colouredOrGrey, type PrintedLook } from "./coloured-or-grey.ts";
import { writeFullBike } from "./full-bike.ts";
import { type PdfPages, readPdf } from "./pdf-pages.ts";

/** ISO 216 in millimetres, and the American letter of 8.5 by 11 inches, as points of 1/72 inch. */
const points = (millimetres: number) => (millimetres / 25.4) * 72;
const paperSizes = {
  A5: [points(148), points(210)],
  A4: [points(210), points(297)],
  Letter: [612, 792],
} as const;
const papers = ["A5", "A4", "Letter"] as const;

const pages: Record<string, { page: SheetPage; across: boolean; texts: readonly string[] }> = {
  "the setup sheet": {
    page: { of: "rider", riderId: "alder" },
    across: false,
    texts: ["Rowan Alder", "Kestrel Ridge Downhill", "78 psi", "154 psi", "Before you touch the bike", "Notes"],
  },
  "the session sheet": {
    page: { of: "team" },
    across: true,
    texts: [
      "Rowan Alder",
      "Sami Willow",
      "83.5 psi",
      "1.65 bar",
      "Rear: shock and tyre",
      "Before you touch the bike",
      "Notes",
    ],
  },
  "the weekend report": {
    page: { of: "weekend" },
    across: false,
    texts: ["Practice 2", "Rowan Alder", "Sami Willow", "3:51.4", "Run times", "Where it ended", "Kim Larch"],
  },
};

let open: OpenPage;

beforeAll(async () => {
  open = await openPage(requestFor({ of: "team" }));
});

afterAll(() => open?.close());

describe.each(Object.entries(pages))("%s", (_, { page, across, texts }) => {
  test.each(papers)("is printed on %s, with all it has to say, tagged", async (paper) => {
    const pdf = await printed(requestFor(page, paper));
    const [width, height] = across ? [...paperSizes[paper]].reverse() : paperSizes[paper];
    for (const size of pdf.sizes) {
      expect(size[0]).toBeCloseTo(width ?? 0, -0.5);
      expect(size[1]).toBeCloseTo(height ?? 0, -0.5);
    }
    const all = pdf.texts.join(" ");
    for (const text of [...texts, "Printed", "This may be old: state of"]) expect(all).toContain(text);
    expect(pdf.isTagged).toBe(true);
  });

  test.each(["sun", "dark"])("is black on white in the %s theme, and nothing wider than the paper", async (theme) => {
    await open.page.evaluate(`localStorage.setItem("pitslate.theme", "${theme}")`);
    await visit(requestFor(page));
    const found = await lookOnA5(across);
    expect(found.seen).toBeGreaterThan(100);
    expect(found.wrong).toEqual([]);
    expect(found.visibleControls).toBe(0);
  });
});

test("a grey word, a shaded box and a table that is too wide would be found", async () => {
  await visit(requestFor({ of: "rider", riderId: "alder" }));
  await open.page.evaluate(`
    document.querySelector(".print-head p").style.color = "#777";
    document.querySelector(".print-cautions").style.background = "#eee";
    document.querySelector(".print-setup").style.width = "200mm";
  `);
  const { wrong } = await lookOnA5(false);
  for (const what of ["p. in rgb(119", "print-cautions on rgb(238", "print-setup is wider"]) {
    expect(wrong.join("\n")).toContain(what);
  }
});

test("twenty rows of a setup fit one A5 page, and what follows has its head again", async () => {
  const bike = writeFullBike();
  try {
    const full = requestFor({ of: "rider", riderId: "alder" }, "A5", bike.file);
    const other = await openPage(full);
    const rows = await other.page.locator("tr[data-row]").count();
    const pdf = await readPdf(await other.page.pdf({ preferCSSPageSize: true, tagged: true }));
    await other.close();
    expect(rows).toBe(20);
    const values = [
      "88.5 psi",
      "151 psi",
      "2 spacers",
      "375 lbf/in",
      "1.5 turns",
      "11 clicks",
      "12 clicks",
      "13 clicks",
    ];
    for (const value of values) expect(occurrences(pdf.texts[0], value), value).toBeGreaterThanOrEqual(2);
    expect(occurrences(pdf.texts[0], "Tyre pressure")).toBe(4);
    expect(pdf.texts[1]).toContain("Rowan Alder. Kestrel Ridge Downhill");
  } finally {
    bike.close();
  }
});

test("the command writes the same page as a file", async () => {
  const folder = mkdtempSync(join(tmpdir(), "pitslate-print-"));
  const output = join(folder, "sheet.pdf");
  const args = [
    "--import",
    "tsx",
    "scenarios/sheet.ts",
    "scenarios/kestrel-ridge.json",
    "--rider",
    "alder",
    "-o",
    output,
  ];
  const { status, stderr } = spawnSync(process.execPath, args, { cwd: root, encoding: "utf8" });
  expect(stderr).toBe("");
  expect(status).toBe(0);
  const { texts } = await readPdf(readFileSync(output));
  rmSync(folder, { recursive: true, force: true });
  expect(texts[0]).toContain("Rowan Alder");
});

function requestFor(
  page: SheetPage,
  paper: (typeof papers)[number] = "A5",
  file = scenarioFile("kestrel-ridge"),
): PrintRequest {
  const wanted = printRequest({ file, page, paper, session: undefined, output: "" });
  if (!wanted.ok) throw new Error(wanted.sentences.join("\n"));
  return wanted.request;
}

async function visit({ address, entries }: PrintRequest): Promise<void> {
  await open.page.goto(new URL(address, open.page.url()).href);
  await open.page.locator(`article[data-entries="${entries}"]`).waitFor();
}

async function printed(request: PrintRequest): Promise<PdfPages> {
  await visit(request);
  return readPdf(await open.page.pdf({ preferCSSPageSize: true, tagged: true }));
}

/** A5 is the narrowest: less its margins it is 130 mm wide, and across 194 mm; a CSS pixel is 1/96 inch. */
async function lookOnA5(across: boolean): Promise<PrintedLook> {
  await open.page.setViewportSize({ width: Math.floor(((across ? 194 : 130) / 25.4) * 96), height: 900 });
  await open.page.emulateMedia({ media: "print" });
  const found = await open.page.evaluate(colouredOrGrey);
  await open.page.emulateMedia({ media: null });
  return found;
}

function occurrences(text: string | undefined, part: string): number {
  return (text ?? "").split(part).length - 1;
}
