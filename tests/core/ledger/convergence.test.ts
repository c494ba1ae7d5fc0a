import { isDeepStrictEqual } from "node:util";
import fc from "fast-check";
import { describe, expect, it } from "vitest";
import { createLedger } from "#core/ledger/ledger.ts";
import { sameJson } from "#core/ledger/plain-json.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import {
  everythingOf,
  ledgerOf,
  machineKind,
  numbersOf,
  paperKind,
  rawRecord,
  recordId,
  registry,
} from "./ledger-fixture.ts";

type Arrival = { readonly raw: unknown; readonly document: string };

// Few ids, keys and values, so that superseding, circles, conflicts and agreement all happen often.
const numbers = fc.integer({ min: 0, max: 9 });
const subjects = fc.constantFrom(
  "paper:one",
  "paper:two",
  "machine:one",
  "clicks:r1/fork",
  "clicks:r2/fork",
  "unknown:one",
) as fc.Arbitrary<LedgerRecord["subject"]>;
const values = fc.oneof(
  fc.constantFrom("a", "b", { count: 3 }, { count: 3, note: "cold" }, { count: 99 }),
  fc.record({
    name: fc.constantFrom("a", "b"),
    mass: fc.record({ value: fc.constantFrom(70, 80), unit: fc.constant("kg") }),
  }),
);
const documents = fc.constantFrom("team", "rider/r1/2031", "rider/r1/2032", "rider/r2/2031", "attic");
const written = fc
  .tuple(numbers, subjects, values, fc.boolean(), fc.array(numbers, { maxLength: 3 }))
  .map(([n, subject, value, voided, named]): unknown =>
    rawRecord(n, {
      subject,
      supersedes: named.map(recordId),
      ...(voided ? { voided: { reason: "mistake" } } : { value }),
    }),
  );
const arrivals: fc.Arbitrary<Arrival[]> = fc.array(
  fc.record({
    raw: fc.oneof(
      { weight: 9, arbitrary: written },
      { weight: 1, arbitrary: fc.constantFrom(null, "x", { id: 1 }, [Number.NaN]) },
    ),
    document: documents,
  }),
  { maxLength: 25 },
);

const ledgerAfter = (sequence: readonly Arrival[]) => {
  const ledger = createLedger(registry);
  for (const { raw, document } of sequence) ledger.add(raw, document);
  return ledger;
};

describe("any set of records", () => {
  it("M9 reads the same whatever the order and repetition of arrival", () => {
    const twoWays = arrivals.chain((sequence) =>
      fc.tuple(
        fc.constant(sequence),
        fc
          .tuple(fc.shuffledSubarray(sequence), fc.shuffledSubarray(sequence, { minLength: sequence.length }))
          .map(([some, all]) => [...some, ...all]),
      ),
    );
    fc.assert(
      fc.property(twoWays, ([once, again]) => {
        expect(everythingOf(ledgerAfter(again))).toEqual(everythingOf(ledgerAfter(once)));
      }),
      { numRuns: 500 },
    );
  });

  it("M9 reads the same when it is read after every arrival as when it is rebuilt from nothing", () => {
    fc.assert(
      fc.property(arrivals, (sequence) => {
        const grown = createLedger(registry);
        for (const [position, { raw, document }] of sequence.entries()) {
          grown.add(raw, document);
          expect(everythingOf(grown)).toEqual(everythingOf(ledgerAfter(sequence.slice(0, position + 1))));
        }
      }),
      { numRuns: 100 },
    );
  });

  it("M10 loses nothing: every arrival is in a history or among the unreadable, and size counts each once", () => {
    fc.assert(
      fc.property(arrivals, (sequence) => {
        const ledger = ledgerAfter(sequence);
        const aside = ledger.unreadable();
        const readable = registry.kinds.flatMap((kind) =>
          ledger.keys(kind).flatMap((key) => ledger.history(kind, key) as LedgerRecord[]),
        );
        for (const { raw, document } of sequence) {
          const id = (raw as LedgerRecord | null)?.id;
          const kept = readable.some((record) => record.id === id && ledger.documentOf(id) !== undefined);
          // Two objects of the same content are one record, whatever prototype they came with.
          const isSame = (other: unknown) => isDeepStrictEqual(other, raw) || sameJson(other, raw);
          expect(kept || aside.some((entry) => entry.document === document && isSame(entry.raw))).toBe(true);
        }
        expect(new Set(readable).size).toBe(readable.length);
      }),
      { numRuns: 300 },
    );
  });

  it("M1 M6 has as heads exactly the records that nothing supersedes but what they supersede in turn", () => {
    const links = fc.array(fc.array(fc.integer({ min: 0, max: 11 }), { maxLength: 3 }), {
      minLength: 1,
      maxLength: 12,
    });
    fc.assert(
      fc.property(links, (named) => {
        const ledger = ledgerOf(
          named.map((targets, n) => rawRecord(n, { value: "v", supersedes: targets.map(recordId) })),
        );
        const reach = named.map((targets) => new Set(targets.filter((target) => target < named.length)));
        for (const via of named.keys()) {
          for (const from of reach) {
            if (from.has(via)) for (const target of reach[via] ?? []) from.add(target);
          }
        }
        const heads = [...named.keys()].filter(
          (n) => !named.some((targets, from) => from !== n && targets.includes(n) && !reach[n]?.has(from)),
        );
        expect(numbersOf(ledger.heads(paperKind, "one"))).toEqual(heads);
        expect(heads.length).toBeGreaterThan(0);
        const order = numbersOf(ledger.history(paperKind, "one"));
        for (const [from, reached] of reach.entries()) {
          for (const target of reached) {
            if (!reach[target]?.has(from)) expect(order.indexOf(target)).toBeLessThan(order.indexOf(from));
          }
        }
      }),
      { numRuns: 500 },
    );
  });

  it("M4 never shows for a field a value that nobody wrote, and names a field as disputed only when heads differ in it", () => {
    const machines = fc.array(
      fc.tuple(
        fc.constantFrom("a", "b", "c"),
        fc.constantFrom(60, 70, 80),
        fc.option(fc.constantFrom(1, 2), { nil: undefined }),
      ),
      { minLength: 2, maxLength: 4 },
    );
    fc.assert(
      fc.property(machines, (written) => {
        const records = written.map(([name, mass, low], n) =>
          rawRecord(n, {
            subject: "machine:one",
            value: { name, mass: { value: mass, unit: "kg" }, ...(low === undefined ? {} : { low }) },
            supersedes: n === 0 ? [] : [recordId(0)],
          }),
        );
        const current = ledgerOf(records).current(machineKind, "one");
        if (current.state === "absent") throw new Error("the subject vanished");
        const field = (value: unknown, name: string) => (value as Record<string, unknown> | undefined)?.[name];
        const [base, ...heads] = records;
        for (const name of ["name", "mass", "low"]) {
          const changed = heads
            .map(({ value }) => field(value, name))
            .filter((it) => !isDeepStrictEqual(it, field(base?.value, name)));
          const different = changed.filter((it, n) => changed.findIndex((other) => isDeepStrictEqual(other, it)) === n);
          const disputed = current.state === "disputed" && current.fields !== undefined && name in current.fields;
          expect(disputed).toBe(different.length > 1);
          expect(field(current.value, name)).toEqual(different.length === 1 ? different[0] : field(base?.value, name));
        }
      }),
      { numRuns: 500 },
    );
  });
});

describe("equality", () => {
  const json = fc.jsonValue({ maxDepth: 3 });

  it("M13 is deep equality of JSON values", () => {
    fc.assert(
      fc.property(json, json, (one, other) => {
        const signless = (value: unknown): unknown => JSON.parse(JSON.stringify(value));
        expect(sameJson(one, other)).toBe(isDeepStrictEqual(signless(one), signless(other)));
        expect(sameJson(one, structuredClone(one))).toBe(true);
      }),
    );
  });

  it("M13 does not see the order of keys", () => {
    fc.assert(
      fc.property(fc.dictionary(fc.string(), json), (value) => {
        expect(sameJson(value, Object.fromEntries(Object.entries(value).reverse()))).toBe(true);
      }),
    );
  });
});
