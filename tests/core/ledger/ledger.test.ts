import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { createKindRegistry, defineKind } from "#core/ledger/kind.ts";
import { createLedger, settledValue } from "#core/ledger/ledger.ts";
import { describeLedgerProblem } from "#core/ledger/write.ts";
import {
  clicksKind,
  deskOf,
  ledgerOf,
  machineKind,
  numbersOf,
  paperKind,
  rawRecord,
  recordId,
  registry,
  states,
  voids,
} from "./ledger-fixture.ts";

describe("reading a ledger", () => {
  it("lists the keys that have a readable record, sorted, and forgets a key whose only record is set aside", () => {
    const ledger = ledgerOf([states(1, "paper:b", 1), states(2, "paper:a", 1), voids(3, "paper:c")]);
    expect(ledger.keys(paperKind)).toEqual(["a", "b", "c"]);
    ledger.add(states(1, "paper:b", 2), "team");
    expect(ledger.keys(paperKind)).toEqual(["a", "c"]);
    expect(ledger.keys(machineKind)).toEqual([]);
  });

  it("M10 gives the history with causes before effects, otherwise by id", () => {
    const ledger = ledgerOf([
      states(1, "paper:one", "a", 7),
      states(5, "paper:one", "b"),
      states(7, "paper:one", "c"),
      states(3, "paper:one", "d", 5),
    ]);
    expect(numbersOf(ledger.history(paperKind, "one"))).toEqual([7, 1, 5, 3]);
  });

  it("gives the settled value, and none for a subject in dispute or absent", () => {
    const ledger = ledgerOf([states(1, "paper:one", "a"), states(2, "paper:two", "a"), states(3, "paper:two", "b")]);
    expect(settledValue(ledger.current(paperKind, "one"))).toBe("a");
    expect(settledValue(ledger.current(paperKind, "two"))).toBeUndefined();
    expect(settledValue(ledger.current(paperKind, "three"))).toBeUndefined();
  });

  it("refuses a kind that is not the one it was made with", () => {
    const namesake = defineKind({ kind: "paper", scope: "team", merge: "whole", schema: z.string() });
    expect(() => ledgerOf([]).current(namesake, "one")).toThrow('"paper" is not one of');
  });

  it("keeps fields of the envelope that it does not know", () => {
    const signed = { ...rawRecord(1), sig: "abc" };
    expect(ledgerOf([signed]).record(recordId(1))).toEqual(signed);
  });
});

describe("records that are set aside", () => {
  it.each([
    ["a text", "text", "bad envelope"],
    ["nothing", undefined, "not plain"],
    ["bytes", new Uint8Array([1]), "not plain"],
    ["a number that is none, deep inside", rawRecord(1, { value: [{ a: Number.NaN }] }), "not plain"],
    ["a broken envelope", { ...rawRecord(1), by: 7 }, "bad envelope"],
    ["both a value and a void", { ...rawRecord(1), voided: { reason: "x" } }, "bad envelope"],
    ["neither a value nor a void", (({ value, ...rest }) => rest)(rawRecord(1)), "bad envelope"],
    ["a cause of no known type", { ...rawRecord(1), cause: { type: "whim" } }, "bad envelope"],
    ["another version", { ...rawRecord(1), version: 2 }, "other version"],
    ["more than 16 KiB", rawRecord(1, { value: "é".repeat(8 * 1024) }), "too large"],
    ["an unknown kind", rawRecord(1, { subject: "stranger:one" }), "unknown kind"],
    ["a value that the kind refuses", rawRecord(1, { subject: "machine:one", value: { name: "" } }), "bad value"],
    [
      "a rider's kind in the team's document",
      rawRecord(1, { subject: "clicks:r1/fork", value: { count: 1 } }),
      "wrong document",
    ],
    ["a rider's kind without a rider", rawRecord(1, { subject: "clicks:fork", value: { count: 1 } }), "wrong document"],
  ])("M7 %s is kept, shown with the reason, and supersedes nothing", (_, raw, type) => {
    const ledger = ledgerOf([states(9, "paper:one", "kept"), raw, raw]);
    expect(ledger.unreadable()).toEqual([{ raw, document: "team", problem: expect.objectContaining({ type }) }]);
    expect(ledger.size).toBe(2);
    expect(settledValue(ledger.current(paperKind, "one"))).toBe("kept");
  });

  it("M7 a kind is read only in the documents of its scope, and a rider's only in that rider's", () => {
    const ledger = createLedger(registry);
    const raw = states(1, "clicks:r1/fork", { count: 1 });
    expect(ledger.add(raw, "rider/r2/2031")).toMatchObject({ ok: false, problem: { type: "wrong document" } });
    expect(ledger.add(raw, "rider/r10/2031")).toMatchObject({ ok: false, problem: { type: "wrong document" } });
    expect(ledger.add(raw, "nowhere")).toMatchObject({ ok: false, problem: { type: "wrong document" } });
    expect(ledger.add(rawRecord(2), "rider/r1/2031")).toMatchObject({ ok: false, problem: { type: "wrong document" } });
    expect(ledger.add(raw, "rider/r1/2031")).toMatchObject({ ok: true, changed: true });
    expect(settledValue(ledger.current(clicksKind, "r1/fork"))).toEqual({ count: 1 });
    expect(ledger.unreadable().map(({ document }) => document)).toEqual([
      "nowhere",
      "rider/r1/2031",
      "rider/r10/2031",
      "rider/r2/2031",
    ]);
  });

  it("M7 a kind judges the key, also of a record that voids, and whether the value fits under it", () => {
    const shelf = defineKind({
      kind: "shelf",
      scope: "team",
      merge: "whole",
      schema: z.object({ row: z.string() }),
      misfit: (key, value) =>
        key.length > 1 ? "shelves have one letter" : value?.row === key ? "it cannot stand in itself" : undefined,
    });
    const ledger = createLedger(createKindRegistry([shelf]));
    ledger.addMany(
      [states(1, "shelf:a", { row: "b" }), states(2, "shelf:a", { row: "a" }, 1), voids(3, "shelf:ab")],
      "team",
    );
    expect(settledValue(ledger.current(shelf, "a"))).toEqual({ row: "b" });
    expect(ledger.keys(shelf)).toEqual(["a"]);
    expect(ledger.unreadable().map(({ problem }) => describeLedgerProblem(problem))).toEqual([
      "shelf:a: it cannot stand in itself.",
      "shelf:ab: shelves have one letter.",
    ]);
    const { writer } = deskOf(ledger);
    expect(writer.set(shelf, "ab", { row: "b" })).toMatchObject({ ok: false, problem: { type: "misfit" } });
  });

  it("M8 one id with two contents sets both aside, whichever came first and whether or not they can be read", () => {
    const one = rawRecord(1, { value: "a" });
    for (const other of [rawRecord(1, { value: "b" }), rawRecord(1, { subject: "stranger:one" })]) {
      for (const order of [
        [one, other],
        [other, one],
        [one, other, one, other],
      ]) {
        const ledger = ledgerOf(order);
        expect(ledger.current(paperKind, "one")).toEqual({ state: "absent" });
        expect(ledger.unreadable().map(({ problem }) => problem.type)).toEqual(["conflicting", "conflicting"]);
        expect(ledger.record(recordId(1))).toBeUndefined();
      }
    }
  });

  it("M8 one record in two seasons of a rider is one, and stands in the first", () => {
    const raw = states(1, "clicks:r1/fork", { count: 1 });
    const ledger = ledgerOf([raw], "rider/r1/2032");
    ledger.add(structuredClone(raw), "rider/r1/2031");
    expect(ledger.size).toBe(1);
    expect(ledger.documentOf(recordId(1))).toBe("rider/r1/2031");
  });

  it("M7 one unreadable record in two documents names each, whichever came first", () => {
    const raw = rawRecord(2);
    for (const order of [
      ["rider/r1/2031", "rider/r1/2032"],
      ["rider/r1/2032", "rider/r1/2031"],
    ] as const) {
      const ledger = createLedger(registry);
      for (const document of order) ledger.add(raw, document);
      expect(ledger.unreadable().map(({ document, problem }) => [document, problem])).toEqual(
        ["rider/r1/2031", "rider/r1/2032"].map((document) => [
          document,
          expect.objectContaining({ type: "wrong document", document }),
        ]),
      );
    }
  });

  it("M8 nobody takes a team record away by writing its id into his own document", () => {
    const ledger = ledgerOf([rawRecord(1, { value: "team's" })]);
    ledger.add(states(1, "clicks:r1/fork", { count: 1 }), "rider/r1/2031");
    expect(settledValue(ledger.current(paperKind, "one"))).toBe("team's");
    expect(ledger.record(recordId(1))?.value).toBe("team's");
    expect(ledger.documentOf(recordId(1))).toBe("team");
    expect(ledger.unreadable()).toEqual([]);
  });
});

describe("noticing changes", () => {
  it("tells which subjects changed, once for many records, and not at all for what was there already", () => {
    const ledger = createLedger(registry);
    const heard: string[][] = [];
    const stop = ledger.onChange((subjects) => void heard.push([...subjects].sort()));
    ledger.addMany([rawRecord(1), rawRecord(2, { subject: "paper:two" }), rawRecord(1)], "team");
    expect(ledger.revision).toBe(2);
    ledger.add(rawRecord(1), "team");
    expect(ledger.revision).toBe(2);
    ledger.add("nonsense", "team");
    ledger.add(rawRecord(2, { subject: "paper:three" }), "team");
    stop();
    ledger.add(rawRecord(4), "team");
    expect(heard).toEqual([["paper:one", "paper:two"], [], ["paper:two"]]);
    expect(ledger.revision).toBe(5);
  });
});

describe("the cost of one record", () => {
  it("is one judgement of its value and a look at its own subject, however many records there are", () => {
    let judged = 0;
    let compared = 0;
    const counted = defineKind({
      kind: "counted",
      scope: "team",
      merge: "whole",
      schema: z.number().check(z.refine(() => ++judged > 0)),
      fact: (value) => {
        compared++;
        return value;
      },
    });
    const ledger = createLedger(createKindRegistry([counted]));
    const many = 5000;
    ledger.addMany(
      Array.from({ length: many }, (_, n) => states(n, `counted:${n}`, n)),
      "team",
    );
    for (const key of ledger.keys(counted)) ledger.current(counted, key);
    expect([judged, compared]).toEqual([many, many]);
    const untouched = ledger.current(counted, "8");
    ledger.add(states(many, "counted:7", 0), "team");
    expect(ledger.current(counted, "7").state).toBe("disputed");
    for (const key of ledger.keys(counted)) ledger.current(counted, key);
    expect([judged, compared]).toEqual([many + 1, many + 2]);
    expect(ledger.current(counted, "8")).toBe(untouched);
  });
});
