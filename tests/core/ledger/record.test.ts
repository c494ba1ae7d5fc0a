import { createHash } from "node:crypto";
import { readFileSync } from "node:fs";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { causeSchema } from "#core/ledger/cause.ts";
import { documentNameFor, parseDocumentName, realmOf } from "#core/ledger/documents.ts";
import { createKindRegistry, defineKind } from "#core/ledger/kind.ts";
import { createLedger, settledValue } from "#core/ledger/ledger.ts";
import { examineJson, sameJson, utf8Length } from "#core/ledger/plain-json.ts";
import { parseRecord, recordSchema, splitSubject, subjectOf } from "#core/ledger/record.ts";
import { clicksKind, machineKind, rawRecord, recordId, registry } from "./ledger-fixture.ts";

describe("the envelope", () => {
  it("has the form of version 1; when this fails, raise the version, keep reading the old one and add a fixture of it", () => {
    const fingerprint = createHash("sha256")
      .update(examineJson(z.toJSONSchema(recordSchema)).text)
      .digest("hex");
    expect(fingerprint).toBe("1baa0d8987560eaf14af67c03dd812ebbaa3aa16da972ebd6e6cdb24f3a04c36");
  });

  it("is read from records that were written with version 1", () => {
    const old: unknown = JSON.parse(readFileSync(new URL("./records-version-1.json", import.meta.url), "utf8"));
    const { team, rider } = old as { team: unknown[]; rider: unknown[] };
    const ledger = createLedger(registry);
    ledger.addMany(team, "team");
    ledger.addMany(rider, "rider/r1/2031");
    expect(ledger.unreadable()).toEqual([]);
    expect(settledValue(ledger.current(machineKind, "m1"))).toEqual({
      name: "Quarry",
      mass: { value: 16.2, unit: "kg" },
    });
    expect(ledger.current(clicksKind, "r1/m1/fork.rebound").state).toBe("disputed");
    expect(ledger.current(clicksKind, "r1/m1/shock.rebound").state).toBe("absent");
    const causes = rider.map((record) => (record as { cause?: { type: string } }).cause?.type);
    expect(new Set(causes)).toEqual(new Set(z.toJSONSchema(causeSchema).oneOf?.map(causeName)));
  });

  it.each([
    ["id", "01ARZ3NDEKTSV4RRFFQ69G5FAU", "is not a record id"],
    ["id", "01arz3ndektsv4rrffq69g5fav", "is not a record id"],
    ["subject", "paper", "is not of the form kind:key"],
    ["subject", "paper:a b", "is not of the form kind:key"],
    ["supersedes", "none", '"none" is not a list'],
    ["by", "", "needs at least 1 characters"],
    ["at", "2031-05-04T09:00:00+02:00", '"2031-05-04T09:00:00+02:00" is not in the form that is allowed here'],
    ["at", "yesterday", '"yesterday" is not in the form that is allowed here'],
  ])("refuses %s of %j", (field, value, sentence) => {
    expect(parseRecord({ ...rawRecord(1), [field]: value })).toMatchObject({
      ok: false,
      problem: { type: "bad envelope", fields: [{ path: field, sentence: `${field}: ${sentence}` }] },
    });
  });

  it("takes a record of exactly 16 KiB, counted in UTF-8, and none of a byte more", () => {
    const filled = (text: string) => rawRecord(1, { value: text });
    const room = 16 * 1024 - Buffer.byteLength(JSON.stringify(filled("")));
    expect(parseRecord(filled("x".repeat(room)))).toMatchObject({ ok: true });
    expect(parseRecord(filled(`${"x".repeat(room - 2)}é`))).toMatchObject({ ok: true });
    expect(parseRecord(filled(`${"x".repeat(room - 1)}é`))).toMatchObject({ problem: { type: "too large" } });
  });

  it("refuses a value that is nested too deep, and one that hides keys in its prototype", () => {
    const deep = (levels: number): unknown => JSON.parse(`${"[".repeat(levels)}${"]".repeat(levels)}`);
    expect(parseRecord(rawRecord(1, { value: deep(31) }))).toMatchObject({ ok: true });
    expect(parseRecord(rawRecord(1, { value: deep(5000) }))).toMatchObject({ problem: { type: "not plain" } });
    const hidden = Object.setPrototypeOf({}, { count: 3 });
    expect(parseRecord(rawRecord(1, { value: hidden }))).toMatchObject({ problem: { type: "not plain" } });
    const own: unknown = JSON.parse('{"__proto__": {"count": 3}}');
    expect(parseRecord(rawRecord(1, { value: own }))).toMatchObject({ problem: { type: "not plain" } });
    expect(examineJson(hidden).text).not.toBe(examineJson({}).text);
  });

  it("writes the same text of a part, whether what stands beside it is plain JSON or not", () => {
    fc.assert(
      fc.property(fc.jsonValue(), (value) => {
        const alone = examineJson(value);
        const { text, problem } = examineJson([value, undefined]);
        expect(text.startsWith(`[${alone.text},`)).toBe(true);
        expect(problem?.path.startsWith("1")).toBe(alone.problem === undefined);
        if (alone.problem === undefined) expect(sameJson(JSON.parse(alone.text), value)).toBe(true);
      }),
    );
  });

  it("tells different things that are not JSON apart", () => {
    const things = [
      undefined,
      Number.NaN,
      Number.POSITIVE_INFINITY,
      1n,
      new Uint8Array([1]),
      new Uint8Array([1, 2]),
      null,
      "",
      [],
      {},
    ];
    const texts = [...things, things.map((thing) => [thing])].map((thing) => examineJson(thing).text);
    expect(new Set(texts).size).toBe(texts.length);
  });

  it("counts bytes as an encoder does", () => {
    for (const text of ["", "abc", "é", "€", "😀", "\ud800", "a\udc00b"]) {
      expect(utf8Length(text)).toBe(new TextEncoder().encode(text).length);
    }
  });

  it("joins and splits subjects", () => {
    expect(splitSubject(subjectOf("clicks", "r1/m1"))).toEqual({ kind: "clicks", key: "r1/m1" });
    expect(() => splitSubject("nothing")).toThrow("not a subject");
    expect(recordId(12)).toHaveLength(26);
  });
});

describe("document names", () => {
  it.each(["team", "rider/r1/2031", "rider/01ARZ3NDEKTSV4RRFFQ69G5FAV/1999"])("%s names a document", (name) => {
    const scope = parseDocumentName(name);
    expect(scope && documentNameFor(scope)).toBe(name);
  });

  it.each([
    "",
    "Team",
    "team/",
    "rider",
    "rider/r1",
    "rider//2031",
    "rider/../2031",
    "rider/r1/31",
    "rider/a/b/2031",
    "rider/r1/02031",
    "rider/r1/2031\n",
    "\nteam",
  ])("%j names none, and shares its realm with no document", (name) => {
    expect(parseDocumentName(name)).toBeUndefined();
    expect(realmOf(name)).toBe(`?${name}`);
  });

  it("gives all seasons of a rider one realm, and no name to what is no scope", () => {
    expect(realmOf("rider/r1/2031")).toBe(realmOf("rider/r1/2032"));
    expect(() => documentNameFor({ scope: "rider", rider: "a/b", year: 2031 })).toThrow("No document");
  });
});

describe("kinds", () => {
  const any = z.unknown();
  it("cannot be registered twice", () => {
    expect(() => createKindRegistry([clicksKind, { ...clicksKind }])).toThrow('"clicks" is defined twice');
  });

  it("must have a name that fits into a subject, and compare fields whole", () => {
    expect(() => defineKind({ kind: "a:b", scope: "team", merge: "whole", schema: any })).toThrow("cannot name a kind");
    expect(() => defineKind({ kind: "a", scope: "team", merge: "fields", schema: any, fact: (v) => v })).toThrow(
      "merges by fields",
    );
  });
});

function causeName(option: unknown): string | undefined {
  return (option as { properties?: { type?: { const?: string } } }).properties?.type?.const;
}
