import { readFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { Ajv2020 } from "ajv/dist/2020.js";
import fc from "fast-check";
import { describe, expect, test } from "vitest";
import { describeFilePlace } from "#core/exchange/file-place.ts";
import { preview } from "#core/exchange/preview.ts";
import { readTeamData } from "#core/exchange/read-team-data.ts";
import { teamData, teamDataJsonSchema } from "#core/exchange/team-data.ts";
import { createKindRegistry } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { movePart } from "#core/planning/move-part.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { teamLedger, written } from "#tests/builders/team-ledger.ts";
import { bikeOf, putOn, RACE, SPARE, settingOn, teamWithSpare } from "#tests/builders/two-bikes.ts";
import { arriveFromElsewhere, MAIN } from "#tests/client/pit/pit-team.ts";
import { played, scenarioNamed, scenarioNames } from "#tests/scenarios/scenario-files.ts";
import { accepted, emptyTeam, fileOf, previewOf, refusedInWords, takeIn } from "./exchange-team.ts";

const schemaFile = fileURLToPath(new URL("../../../client/public/team-data.schema.json", import.meta.url));
const validator = () => new Ajv2020({ allErrors: true }).compile(JSON.parse(readFileSync(schemaFile, "utf8")));

/** The ledger of a weekend that was played to its end, as its first device has it. */
function playedLedger(name: (typeof scenarioNames)[number]): Ledger {
  const [device] = played(scenarioNamed(name)).devices;
  if (!device) throw new Error(`${name} has no device.`);
  return device.ledger;
}

describe("the JSON Schema of a team's data", () => {
  test("is the one that the program's own schemas give: npm run schema writes it", () => {
    expect(JSON.parse(readFileSync(schemaFile, "utf8"))).toEqual(JSON.parse(JSON.stringify(teamDataJsonSchema())));
  });

  test.each(scenarioNames)("holds for all that %s leaves, by an outside validator", (name) => {
    const validate = validator();
    const ledger = playedLedger(name);
    expect(validate(JSON.parse(fileOf(ledger))) || validate.errors).toBe(true);
  });

  test("refuses another format, an unknown kind and a mass without a unit", () => {
    const validate = validator();
    const file = JSON.parse(fileOf(teamLedger().ledger));
    expect(validate(file)).toBe(true);
    expect(validate({ ...file, format: "team" })).toBe(false);
    expect(validate({ ...file, values: { ...file.values, horse: {} } })).toBe(false);
    file.values.rider.alder.mass = { value: 70 };
    expect(validate(file)).toBe(false);
  });
});

describe("a team's data out and in", () => {
  test.each(scenarioNames)("%s: its own file changes nothing, and an empty team becomes equal to it", (name) => {
    const ledger = playedLedger(name);
    const own = previewOf(ledger, fileOf(ledger));
    expect([own.lines, refusedInWords(own).filter(({ sentence }) => !sentence.includes("disputed"))]).toEqual([[], []]);
    expect(own.same).toBeGreaterThan(50);
    const other = emptyTeam();
    const { disputed: _left, ...settled } = teamData(ledger, "2026-05-30T08:00:00.000Z");
    const seen = previewOf(other.ledger, JSON.stringify(settled));
    const count = seen.lines.length;
    expect(takeIn(other.writer, seen)).toBe(count);
    // What leans on something that is disputed cannot come without it, and says so.
    if (seen.refused.length === 0)
      expect(JSON.parse(fileOf(other.ledger))).toEqual(JSON.parse(JSON.stringify(settled)));
    expect(previewOf(other.ledger, JSON.stringify(settled)).lines).toEqual([]);
  });

  test("a part that was moved comes with its place: settings are judged by the part that is there", () => {
    const team = teamWithSpare();
    const mia = team.writerFor("mia");
    putOn(mia);
    const moved = movePart(team.ledger, { partId: "fork-1", from: RACE, to: SPARE, swap: true, airKept: true });
    if (!moved.ok) throw new Error(moved.problem.type);
    written(mia.setMany(moved.entries));
    const other = emptyTeam();
    const seen = previewOf(other.ledger, fileOf(team.ledger));
    expect(seen.refused).toEqual([]);
    takeIn(other.writer, seen);
    // A secondary chamber has the fork that was moved, and not the one that the spare bike was entered with.
    expect(settingOn(other.ledger, SPARE, "fork.secondary-pressure")).toEqual({ value: 110, unit: "psi" });
    expect(bikeOf(other.ledger, RACE).parts.fork?.name).toBe("One-chamber fork");
  });

  test("a preview names what is new, what changes from what to what, and what is refused and why", () => {
    const { ledger } = teamLedger();
    const file = JSON.parse(fileOf(ledger));
    file.values.rider.alder.mass.value = 84;
    file.values.venue.otter = { name: "Otter Hollow", altitude: { value: 300, unit: "m" } };
    file.values.weekend.kestrel.venue = "nowhere";
    file.values.part["fork-1"].name = "";
    file.values.horse = {};
    const { size } = ledger;
    const seen = previewOf(ledger, JSON.stringify(file));
    expect(
      seen.lines.map(({ place, state, differences }) => ({ place: describeFilePlace(place), state, differences })),
    ).toEqual([
      {
        place: 'rider "alder"',
        state: "changes",
        differences: [{ field: "mass", from: "80 kg", to: "84 kg" }],
      },
      { place: 'venue "otter"', state: "new", differences: [] },
    ]);
    expect(refusedInWords(seen)).toEqual([
      { place: '"horse"', sentence: expect.stringMatching(/^There is no such kind; allowed are member, rider, /) },
      { place: 'part "fork-1"', sentence: "Name: a name has 1 to 80 characters in one line." },
      {
        place: 'weekend "kestrel"',
        sentence: 'There is no venue "nowhere", neither here nor in the file as far as it can be taken in.',
      },
    ]);
    expect(ledger.size, "a preview writes nothing").toBe(size);
  });

  test("what leans on a refused value is refused with it", () => {
    const { ledger } = emptyTeam();
    const file = JSON.parse(fileOf(teamLedger().ledger));
    file.values.part["fork-1"].place = "shock";
    const { lines, refused } = previewOf(ledger, JSON.stringify(file));
    expect(refused.map(({ place }) => describeFilePlace(place))).toEqual(
      expect.arrayContaining(['bike "alder-1"', 'rider "alder"', 'baseline "alder/steep"']),
    );
    expect(lines.map(({ place }) => describeFilePlace(place))).toContain('member "mia"');
  });

  test("a value that the bike cannot have is refused with its limit", () => {
    const { ledger } = teamLedger();
    const file = JSON.parse(fileOf(ledger));
    file.values.baseline["alder/steep"].values[MAIN].value = 499;
    expect(refusedInWords(previewOf(ledger, JSON.stringify(file)))).toEqual([
      {
        place: 'baseline "alder/steep"',
        sentence: expect.stringMatching(/^Fork main pressure: 499 psi is outside the part's range of /),
      },
    ]);
  });

  test("what is disputed goes out with both claims, and a file never settles it", () => {
    const team = teamLedger();
    const setting = { quantity: { value: 60, unit: "psi" }, standing: "on the bike" } as const;
    written(team.writerFor("mia").set(settingKind, `alder/alder-1/${MAIN}`, setting));
    const before = fileOf(team.ledger);
    arriveFromElsewhere(team, MAIN, { value: 64, unit: "psi" }, []);
    const file = JSON.parse(fileOf(team.ledger));
    expect(file.disputed.setting[`alder/alder-1/${MAIN}`]).toHaveLength(2);
    expect(file.values.setting).toBeUndefined();
    expect(validator()(file)).toBe(true);
    expect(refusedInWords(previewOf(team.ledger, JSON.stringify(file)))).toEqual([
      { place: `setting "alder/alder-1/${MAIN}"`, sentence: expect.stringContaining("disputed in the file") },
    ]);
    expect(refusedInWords(previewOf(team.ledger, before))).toEqual([
      { place: `setting "alder/alder-1/${MAIN}"`, sentence: expect.stringContaining("It is disputed here.") },
    ]);
  });
});

describe("a hostile file", () => {
  test.each([
    ["", "not JSON"],
    ["[".repeat(1_000_000), "not JSON"],
    ["null", "other format"],
    ['{"format":"pitslate team data","version":2,"values":{}}', "other version"],
    ['{"format":"pitslate team data","version":1,"values":[]}', "no values"],
  ])("is a problem, not an error (%#)", (text, type) => {
    const read = readTeamData(text);
    expect(read.ok ? undefined : read.problem.type).toBe(type);
  });

  test("never makes an error, and every value of it is either taken or refused", () => {
    const kinds = fc.constantFrom("__proto__", ...allKinds.map(({ kind }) => kind));
    const keys = fc.constantFrom(
      "__proto__",
      "constructor",
      "alder",
      "alder/steep",
      "team",
      "a/b/fork.rebound",
      "",
      " ",
    );
    const values = fc.dictionary(kinds, fc.dictionary(keys, fc.jsonValue({ maxDepth: 40 })), { noNullPrototype: true });
    const { ledger } = teamLedger();
    fc.assert(
      fc.property(values, (some) => {
        const text = `{"format":"pitslate team data","version":1,"values":${JSON.stringify(some)}}`;
        const read = accepted(readTeamData(text));
        const seen = preview(ledger, read);
        expect(seen.lines.length + seen.same + seen.refused.length).toBe(read.candidates.length + read.refused.length);
      }),
      { seed: 5, numRuns: 500 },
    );
  });

  test("with a value that is too large for a record refuses that value", () => {
    const { ledger } = teamLedger();
    const file = JSON.parse(fileOf(ledger));
    file.values.rider.alder.extra = "x".repeat(20_000);
    expect(refusedInWords(previewOf(ledger, JSON.stringify(file)))[0]?.sentence).toMatch(
      /bytes; at most 12288 are allowed/,
    );
    expect(createLedger(createKindRegistry([...allKinds])).keys(riderKind)).toEqual([]);
  });
});
