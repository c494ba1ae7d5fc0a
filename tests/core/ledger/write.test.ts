import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createLedger, settledValue } from "#core/ledger/ledger.ts";
import { sameJson } from "#core/ledger/plain-json.ts";
import { describeLedgerProblem, type WriteResult } from "#core/ledger/write.ts";
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

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const m = "machine:one";

function written(result: WriteResult): readonly string[] {
  if (!result.ok) throw new Error(describeLedgerProblem(result.problem));
  return result.records.map(({ id }) => id);
}

function refusal(result: WriteResult): string {
  if (result.ok) throw new Error("The write was not refused.");
  return describeLedgerProblem(result.problem);
}

describe("setting a value", () => {
  it("M12 supersedes every head in view, and is kept before the ledger shows it", () => {
    const ledger = ledgerOf([states(1, "paper:one", "a"), states(2, "paper:one", "b")]);
    const { writer, appended } = deskOf(ledger);
    const result = writer.set(paperKind, "one", "c", { cause: { type: "by hand", note: "read it off" }, batch: "b1" });
    expect(result).toEqual({ ok: true, records: appended });
    expect(appended).toEqual([
      {
        ...rawRecord(1000, { value: "c", supersedes: [recordId(1), recordId(2)] }),
        cause: { type: "by hand", note: "read it off" },
        batch: "b1",
      },
    ]);
    expect(settledValue(ledger.current(paperKind, "one"))).toBe("c");
  });

  it("M12 writes nothing when the value is settled already, unless that is asked for", () => {
    const { writer, appended } = deskOf(ledgerOf([states(1, "paper:one", { a: 1, b: 2 })]));
    expect(writer.set(paperKind, "one", { b: 2, a: 1 })).toEqual({ ok: true, records: [], unchanged: true });
    expect(appended).toEqual([]);
    expect(written(writer.set(paperKind, "one", { b: 2, a: 1 }, { force: true }))).toHaveLength(1);
  });

  it("M12 writes a value whose fact is settled but whose rest differs", () => {
    const { writer, appended } = deskOf(ledgerOf([states(1, "clicks:r1/fork", { count: 4 })], "rider/r1/2031"));
    writer.set(clicksKind, "r1/fork", { count: 4, note: "checked" });
    expect(appended).toHaveLength(1);
  });

  it("writes half a surrogate pair as what arrives elsewhere, and whole ones as they are", () => {
    const { writer, appended } = deskOf(createLedger(registry));
    writer.set(paperKind, "one", { cut: "ride \ud83d", tail: "\udeb2!", whole: "🚲" });
    expect(appended[0]?.value).toStrictEqual({ cut: "ride \ufffd", tail: "\ufffd!", whole: "🚲" });
  });

  it("leaves out fields that are undefined", () => {
    const { writer, appended } = deskOf(createLedger(registry));
    writer.set(paperKind, "one", { a: undefined, b: [{ c: undefined }] });
    expect(appended[0]?.value).toStrictEqual({ b: [{}] });
  });

  it("shows nothing when the record could not be kept", () => {
    const ledger = createLedger(registry);
    const failing = deskOf(ledger);
    failing.appended.push = () => {
      throw new Error("disk full");
    };
    expect(() => failing.writer.set(paperKind, "one", "a")).toThrow("disk full");
    expect(ledger.size).toBe(0);
  });
});

describe("refusals", () => {
  const { writer, appended } = deskOf(createLedger(registry));
  it.each([
    [
      "a mass above what is allowed",
      () => writer.set(machineKind, "one", { name: "a", mass: kg(400) }),
      "machine:one: mass: 400 kg is above the allowed 150 kg.",
    ],
    [
      "a wrong unit",
      () => writer.set(machineKind, "one", { name: "a", mass: { value: 70, unit: "stone" as "kg" } }),
      'machine:one: mass.unit: "stone" is not one of "kg", "lb".',
    ],
    [
      "a number that is no number",
      () => writer.set(machineKind, "one", { name: "a", mass: kg(Number.NaN) }),
      "machine:one: mass: NaN is not a number.",
    ],
    [
      "a missing field and an empty name",
      () => writer.set(machineKind, "one", { name: "" } as never),
      "machine:one: name: needs at least 1 characters; mass: is missing.",
    ],
    [
      "a rule over several fields, in its own words",
      () => writer.set(machineKind, "one", { name: "a", mass: kg(70), low: 2, high: 1 }),
      "machine:one: The value low is above high.",
    ],
    [
      "half a click",
      () => writer.set(clicksKind, "r1/x", { count: 1.5 }),
      "clicks:r1/x: count: 1.5 is not a whole number.",
    ],
    [
      "a negative count",
      () => writer.set(clicksKind, "r1/x", { count: -1 }),
      "clicks:r1/x: count: -1 is below the allowed 0.",
    ],
    [
      "a key with a blank",
      () => writer.set(paperKind, "a b", 1),
      '"a b" cannot name a paper; allowed are 1 to 200 letters, digits and . _ ~ / -',
    ],
    [
      "a value that takes too much room",
      () => writer.set(paperKind, "one", "x".repeat(20_000)),
      `The record takes ${JSON.stringify(rawRecord(1000, { value: "x".repeat(20_000) })).length} bytes; at most 16384 are allowed.`,
    ],
    [
      "a value that JSON cannot carry",
      () => writer.set(paperKind, "one", { at: [new Date(0)] }),
      "value.at.0: an object that is not plain cannot be kept; allowed are texts, numbers, yes or no, lists and objects.",
    ],
    [
      "withdrawing what is not there",
      () => writer.voidSubject(paperKind, "one", "gone"),
      "paper:one has no value that could be withdrawn.",
    ],
    [
      "going back on an unknown record",
      () => writer.revert(recordId(1)),
      `The record ${recordId(1)} is not on this device, or cannot be read.`,
    ],
  ])("%s is refused with one sentence and nothing is written", (_, act, sentence) => {
    expect(refusal(act())).toBe(sentence);
    expect(appended).toEqual([]);
  });

  it("needs a reason to withdraw", () => {
    const desk = deskOf(ledgerOf([rawRecord(1)]));
    expect(refusal(desk.writer.voidSubject(paperKind, "one", ""))).toBe(
      "Not a record: voided.reason: needs at least 1 characters.",
    );
    expect(desk.appended).toEqual([]);
  });
});

describe("writing several subjects", () => {
  it("M12 ties them by one batch and skips what is settled already", () => {
    const { writer, appended } = deskOf(ledgerOf([states(1, "paper:b", 2)]));
    const result = writer.setMany(
      [
        { kind: paperKind, key: "a", value: 1 },
        { kind: paperKind, key: "b", value: 2 },
        { kind: clicksKind, key: "r1/fork", value: { count: 3 }, cause: { type: "own change" } },
      ],
      { cause: { type: "setup" } },
    );
    expect(written(result)).toHaveLength(2);
    expect(appended.map(({ subject, cause }) => [subject, cause?.type])).toEqual([
      ["paper:a", "setup"],
      ["clicks:r1/fork", "own change"],
    ]);
    expect(new Set(appended.map(({ batch }) => batch)).size).toBe(1);
    expect(appended[0]?.batch).toBe(recordId(1000));
  });

  it("M12 writes none when one is refused, or one is given twice", () => {
    const { writer, appended } = deskOf(createLedger(registry));
    const good = { kind: paperKind, key: "a", value: 1 };
    expect(refusal(writer.setMany([good, { kind: clicksKind, key: "r1/x", value: { count: 99 } }]))).toContain("99");
    expect(refusal(writer.setMany([good, { ...good, value: 2 }]))).toContain("paper:a is given twice");
    expect(appended).toEqual([]);
  });
});

describe("going back", () => {
  // The key __proto__ is not allowed in records.
  const json = fc.jsonValue({ maxDepth: 3 }).filter((value) => !JSON.stringify(value).includes("__proto__"));

  it("M11 returns the exact previous value, and going back on that returns the later one", () => {
    fc.assert(
      fc.property(json, json, (first, second) => {
        fc.pre(!sameJson(first, second));
        const ledger = createLedger(registry);
        const { writer } = deskOf(ledger);
        writer.set(paperKind, "one", first);
        const [changed = ""] = written(writer.set(paperKind, "one", second));
        const [back = ""] = written(writer.revert(changed));
        expect(settledValue(ledger.current(paperKind, "one"))).toEqual(first);
        expect(ledger.record(back)?.cause).toEqual({ type: "revert", record: changed });
        writer.revert(back);
        expect(settledValue(ledger.current(paperKind, "one"))).toEqual(second);
        expect(ledger.history(paperKind, "one")).toHaveLength(4);
      }),
    );
  });

  it("M11 withdraws a subject that had no value before, and brings back one that was withdrawn", () => {
    const ledger = createLedger(registry);
    const { writer } = deskOf(ledger);
    const [first = ""] = written(writer.set(paperKind, "one", "a"));
    const [undone = ""] = written(writer.revert(first));
    expect(ledger.current(paperKind, "one")).toMatchObject({ state: "absent", voided: { id: undone } });
    expect(writer.revert(first)).toEqual({ ok: true, records: [], unchanged: true });
    writer.revert(undone);
    expect(settledValue(ledger.current(paperKind, "one"))).toBe("a");
  });

  it("M11 goes back to a void with its reason", () => {
    const ledger = ledgerOf([states(1, "paper:one", "a"), voids(2, "paper:one", 1), states(3, "paper:one", "b", 2)]);
    deskOf(ledger).writer.revert(recordId(3));
    expect(ledger.current(paperKind, "one")).toMatchObject({
      state: "absent",
      voided: { voided: { reason: "a mistake" } },
    });
  });

  it("M11 returns the merged value where the previous records merged", () => {
    const base = { name: "a", mass: kg(70) };
    const ledger = ledgerOf([
      states(1, m, base),
      states(2, m, { ...base, name: "b" }, 1),
      states(3, m, { ...base, mass: kg(80) }, 1),
      states(4, m, { name: "c", mass: kg(90) }, 2, 3),
    ]);
    deskOf(ledger).writer.revert(recordId(4));
    expect(settledValue(ledger.current(machineKind, "one"))).toEqual({ name: "b", mass: kg(80) });
  });

  it("M11 refuses where there was a dispute before, or where the previous record is not here", () => {
    const ledger = ledgerOf([
      states(1, "paper:one", "a"),
      states(2, "paper:one", "b"),
      states(3, "paper:one", "c", 1, 2),
      states(5, "paper:two", "d", 4),
    ]);
    const { writer, appended } = deskOf(ledger);
    expect(refusal(writer.revert(recordId(3)))).toContain("had no single value before");
    expect(refusal(writer.revert(recordId(5)))).toContain("is not on this device");
    expect(appended).toEqual([]);
  });

  it("M11 goes back on an earlier record by superseding what is current now", () => {
    const ledger = ledgerOf([
      states(1, "paper:one", "a"),
      states(2, "paper:one", "b", 1),
      states(3, "paper:one", "c", 2),
    ]);
    const { writer, appended } = deskOf(ledger);
    writer.revert(recordId(2));
    expect(settledValue(ledger.current(paperKind, "one"))).toBe("a");
    expect(appended[0]?.supersedes).toEqual([recordId(3)]);
  });
});

describe("a batch that withdraws something", () => {
  it("M12 voids it with the reason beside what it writes, and leaves alone what is absent", () => {
    const ledger = ledgerOf([states(1, "paper:one", "a")]);
    const { writer, appended } = deskOf(ledger);
    const withdraw = (key: string) => ({ kind: paperKind, key, voided: "moved", cause: { type: "by hand" } as const });
    writer.setMany([withdraw("one"), withdraw("three"), { kind: paperKind, key: "two", value: "b" }]);
    expect(appended.map(({ subject, voided, value }) => [subject, voided?.reason, value])).toEqual([
      ["paper:one", "moved", undefined],
      ["paper:two", undefined, "b"],
    ]);
    expect(new Set(appended.map(({ batch }) => batch)).size).toBe(1);
    expect(ledger.current(paperKind, "one").state).toBe("absent");
  });

  it("M12 is refused as a whole without a reason, or when it speaks of a subject twice", () => {
    const ledger = ledgerOf([states(1, "paper:one", "a")]);
    const { writer, appended } = deskOf(ledger);
    const value = { kind: paperKind, key: "two", value: "b" };
    expect(writer.setMany([value, { kind: paperKind, key: "one", voided: "" }]).ok).toBe(false);
    expect(writer.setMany([value, { kind: paperKind, key: "two", voided: "moved" }])).toMatchObject({
      problem: { type: "subject twice" },
    });
    expect(appended).toEqual([]);
  });
});

describe("settling a dispute", () => {
  it("M12 supersedes every claim and names them as the cause", () => {
    const ledger = ledgerOf([states(1, "paper:one", "a"), states(2, "paper:one", "b"), voids(3, "paper:one")]);
    const { writer, appended } = deskOf(ledger);
    writer.resolve(paperKind, "one", "b");
    const claims = [1, 2, 3].map(recordId);
    expect(appended[0]).toMatchObject({ supersedes: claims, cause: { type: "resolution", records: claims } });
    expect(numbersOf(ledger.heads(paperKind, "one"))).toEqual([1000]);
    expect(settledValue(ledger.current(paperKind, "one"))).toBe("b");
  });
});
