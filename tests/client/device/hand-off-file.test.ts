/** The file of a hand-off: made, read, and refused whatever is done to it. */
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import * as Y from "yjs";
import { allowedFileBytes, type NamedUpdate } from "#client/device/hand-off/bundle.ts";
import { joinHeader } from "#client/device/hand-off/bundle-header.ts";
import { makeBundle } from "#client/device/hand-off/make-bundle.ts";
import { packDocuments } from "#client/device/hand-off/packed-documents.ts";
import { type BundleReading, readBundle } from "#client/device/hand-off/read-bundle.ts";
import { recordOf, riderDocument, riderRecords, stateOf, teamDocuments, teamRecords } from "./hand-off-team.ts";

const about = { device: "pit", at: "2026-05-30T10:30:00.000Z" };

function fileOf(documents: readonly NamedUpdate[] = teamDocuments()): Uint8Array {
  const made = makeBundle({ documents, madeBy: "Kim Larch", team: "Kestrel", ...about });
  if (!made.ok) throw new Error(made.problem.type);
  return made.bytes;
}

/** A file with a true hash by somebody who puts into it what he likes. */
function forged(documents: readonly NamedUpdate[], header: Readonly<Record<string, unknown>> = {}): Uint8Array {
  const { packed, bytes } = packDocuments(documents);
  const told = documents.map(({ name }) => ({ name, records: 0 }));
  const fields = { format: "pitslate hand-off", version: 1, schemaVersion: 1, ...about, documents: told, bytes };
  return joinHeader({ ...fields, ...header } as Parameters<typeof joinHeader>[0], packed);
}

const problems = ["foreign", "newer version", "too large", "damaged", "unknown document", "refused document"];
const problemOf = (reading: BundleReading): string => (reading.ok ? "none" : reading.problem.type);
const line = (file: Uint8Array): string => new TextDecoder().decode(file.subarray(0, file.indexOf(10)));

describe("a bundle", () => {
  test("begins with one line that a person can read: format, version, whose, when, and what each document holds", () => {
    const header = JSON.parse(line(fileOf()));
    expect(header).toMatchObject({
      format: "pitslate hand-off",
      version: 1,
      schemaVersion: 1,
      team: "Kestrel",
      madeBy: "Kim Larch",
      device: "pit",
      at: "2026-05-30T10:30:00.000Z",
      documents: [
        { name: "team", records: 2, first: "2026-05-30T10:00:00.000Z", last: "2026-05-30T10:02:00.000Z" },
        { name: riderDocument, records: 1, first: "2026-05-30T10:07:00.000Z", last: "2026-05-30T10:07:00.000Z" },
      ],
    });
  });

  test("reads as what was put in", () => {
    const reading = readBundle(fileOf());
    expect(reading.ok && reading.bundle.documents).toEqual([
      { ...teamDocuments()[0], records: teamRecords },
      { ...teamDocuments()[1], records: riderRecords },
    ]);
  });

  test("is smaller than its documents when they repeat themselves", () => {
    const many = Array.from({ length: 500 }, (_, index) => recordOf("run:alder-1", { session: "p1" }, index % 60));
    const update = stateOf(many, 13);
    expect(fileOf([{ name: "team", update }]).length).toBeLessThan(update.length / 4);
  });

  test("is not made of what no device could take in", () => {
    const made = makeBundle({ documents: [{ name: "team", update: stateOf([{ id: "no record" }], 1) }], ...about });
    expect(made.ok ? "none" : made.problem.type).toBe("refused document");
  });
});

describe("refused is a file that", () => {
  const notWhole = new Y.Doc();
  notWhole.getMap("settings").set("fork", 62);
  const cases: readonly (readonly [string, string, Uint8Array])[] = [
    ["is empty", "foreign", new Uint8Array()],
    ["is of something else", "foreign", new TextEncoder().encode('{"format":"something else"}\nabc')],
    ["has no line at all", "foreign", new TextEncoder().encode("GIF89a")],
    ["is nested without end", "foreign", new TextEncoder().encode(`${"[".repeat(900_000)}\n`)],
    ["is of a newer version", "newer version", forged(teamDocuments(), { version: 2 })],
    ["holds newer records", "newer version", forged(teamDocuments(), { schemaVersion: 2 })],
    ["ends in the middle", "damaged", fileOf().subarray(0, fileOf().length - 1)],
    ["has something behind its end", "damaged", new Uint8Array([...fileOf(), 0])],
    ["tells of other contents than it has", "damaged", forged(teamDocuments())],
    ["tells of more bytes than it has", "damaged", forged(teamDocuments(), { bytes: 100_000_000 })],
    [
      "unpacks to more than it tells",
      "damaged",
      forged([{ name: "team", update: new Uint8Array(5_000_000) }], { bytes: 9 }),
    ],
    ["has no documents behind its header", "damaged", joinEmpty()],
    ["names a document twice", "damaged", twice()],
    ["names a document that cannot be", "unknown document", forged([{ name: "../team", update: stateOf([], 1) }])],
    ["holds no records", "refused document", forged([{ name: "team", update: Y.encodeStateAsUpdate(notWhole) }])],
    ["holds a broken update", "refused document", forged([{ name: "team", update: new Uint8Array([1, 2, 3]) }])],
  ];
  test.each(cases)("%s (%s)", (_, type, file) => {
    expect(problemOf(readBundle(file))).toBe(type);
  });

  test("has an entry of another version of the program, or one that is none", () => {
    const ofVersion2 = { ...recordOf("member:ash", { name: "Ash", role: "rider" }, 5), version: 2 };
    for (const [record, reason] of [
      [ofVersion2, "other version"],
      [{ id: "no record" }, "bad record"],
    ] as const) {
      const reading = readBundle(forged([{ name: "team", update: stateOf([record], 1) }]));
      expect(reading).toEqual({ ok: false, problem: { type: "refused document", document: "team", reason } });
    }
  });

  test("is larger than any that this device takes in", () => {
    expect(problemOf(readBundle(new Uint8Array(allowedFileBytes + 1)))).toBe("too large");
  });

  function joinEmpty(): Uint8Array {
    return joinHeader(
      { format: "pitslate hand-off", version: 1, schemaVersion: 1, ...about, documents: [], bytes: 1 },
      new Uint8Array(),
    );
  }

  function twice(): Uint8Array {
    const [team] = teamDocuments();
    const told = { name: "team", records: 2, first: teamRecords[0]?.at, last: teamRecords[1]?.at };
    return team ? forged([team, team], { documents: [told, told] }) : new Uint8Array();
  }
});

describe("whatever the bytes", () => {
  const whole = fileOf();
  const original = readBundle(whole);

  test("a changed file is refused or says exactly what it said before", () => {
    const change = fc.record({ at: fc.nat(whole.length - 1), byte: fc.nat(255), remove: fc.nat(3), insert: fc.nat(1) });
    fc.assert(
      fc.property(fc.array(change, { minLength: 1, maxLength: 4 }), (changes) => {
        const bytes = [...whole];
        for (const { at, byte, remove, insert } of changes) {
          bytes.splice(at, remove, ...(insert === 0 ? [] : [byte]));
        }
        const reading = readBundle(new Uint8Array(bytes));
        if (reading.ok) expect(reading).toEqual(original);
        else expect(problems).toContain(reading.problem.type);
      }),
      { numRuns: 2000 },
    );
  });

  test("a file cut anywhere is refused", () => {
    for (let length = 0; length < whole.length; length++) {
      expect(problemOf(readBundle(whole.subarray(0, length)))).toMatch(/foreign|damaged/);
    }
  });

  test("documents of any bytes under a true hash are refused or bring nothing, never thrown at", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.string(), (update, name) => {
        expect(readBundle(forged([{ name: `${name}/`, update }])).ok).toBe(false);
        const reading = readBundle(forged([{ name: "team", update }]));
        if (reading.ok) expect(reading.bundle.documents[0]?.records).toEqual([]);
      }),
      { numRuns: 500 },
    );
  });

  test("any bytes behind a true header are refused, never thrown at", () => {
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), fc.nat(1000), (packed, bytes) => {
        const header = { format: "pitslate hand-off", version: 1, schemaVersion: 1, ...about, documents: [], bytes };
        const reading = readBundle(joinHeader(header as Parameters<typeof joinHeader>[0], packed));
        if (reading.ok) expect(reading.bundle.documents).toEqual([]);
      }),
      { numRuns: 500 },
    );
    fc.assert(
      fc.property(fc.uint8Array({ maxLength: 300 }), (bytes) => {
        expect(problemOf(readBundle(bytes))).toBe("foreign");
      }),
      { numRuns: 500 },
    );
  });
});
