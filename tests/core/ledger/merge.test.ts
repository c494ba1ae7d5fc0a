import { describe, expect, it } from "vitest";
import type { Current } from "#core/ledger/ledger.ts";
import {
  clicksKind,
  ledgerOf,
  machineKind,
  numbersOf,
  paperKind,
  rawRecord,
  recordId,
  states,
  voids,
} from "./ledger-fixture.ts";

const kg = (value: number) => ({ value, unit: "kg" }) as const;
const machine = (name: string, mass: number, rest: object = {}) => ({ name, mass: kg(mass), ...rest });
const m = "machine:one";
const p = "paper:one";

type Expected =
  | { state: "absent"; voided?: number }
  | { state: "settled"; value: unknown; heads: number[] }
  | { state: "disputed"; claims: number[]; fields?: Record<string, number[]>; value?: unknown };

function summary(current: Current): Expected {
  switch (current.state) {
    case "absent":
      return { state: "absent", ...(current.voided === undefined ? {} : { voided: Number(current.voided.id) }) };
    case "settled":
      return { state: "settled", value: current.value, heads: numbersOf(current.heads) };
    case "disputed":
      return {
        state: "disputed",
        claims: numbersOf(current.claims),
        ...(current.fields === undefined
          ? {}
          : { fields: Object.fromEntries(Object.entries(current.fields).map(([name, of]) => [name, numbersOf(of)])) }),
        ...(current.value === undefined ? {} : { value: current.value }),
      };
  }
}

const wholeTable: readonly [string, readonly unknown[], Expected][] = [
  ["M1 a subject without records is absent", [], { state: "absent" }],
  ["M1 one record is current", [states(1, p, "a")], { state: "settled", value: "a", heads: [1] }],
  [
    "M1 what supersedes is current",
    [states(1, p, "a"), states(2, p, "b", 1)],
    { state: "settled", value: "b", heads: [2] },
  ],
  [
    "M1 a lower id supersedes a higher one as well",
    [states(9, p, "a"), states(2, p, "b", 9)],
    { state: "settled", value: "b", heads: [2] },
  ],
  [
    "M2 two different values written apart are disputed",
    [states(1, p, "a"), states(2, p, "b", 1), states(3, p, "c", 1)],
    { state: "disputed", claims: [2, 3] },
  ],
  [
    "M2 the same value written apart is settled, whatever the order of its keys",
    [states(1, p, { a: 1, b: [2] }), states(2, p, { b: [2], a: 1 })],
    { state: "settled", value: { a: 1, b: [2] }, heads: [1, 2] },
  ],
  [
    "M2 an older value that nobody superseded disputes a newer one",
    [states(1, p, "a"), states(2, p, "b", 1), states(3, p, "c")],
    { state: "disputed", claims: [2, 3] },
  ],
  [
    "M2 three claims of two values are all shown",
    [states(1, p, "a"), states(2, p, "b"), states(3, p, "a")],
    { state: "disputed", claims: [1, 2, 3] },
  ],
  [
    "M2 a record that supersedes both claims settles them",
    [states(1, p, "a"), states(2, p, "b"), states(3, p, "b", 1, 2)],
    { state: "settled", value: "b", heads: [3] },
  ],
  ["M2 null is a value like any other", [states(1, p, null)], { state: "settled", value: null, heads: [1] }],
  [
    "M3 a voided subject is absent and shows the void",
    [states(1, p, "a"), voids(2, p, 1)],
    { state: "absent", voided: 2 },
  ],
  ["M3 two voids agree", [states(1, p, "a"), voids(2, p, 1), voids(3, p, 1)], { state: "absent", voided: 2 }],
  [
    "M3 a void beside a value is a dispute",
    [states(1, p, "a"), voids(2, p, 1), states(3, p, "b", 1)],
    { state: "disputed", claims: [2, 3] },
  ],
  [
    "M3 a voided subject can be written again",
    [states(1, p, "a"), voids(2, p, 1), states(3, p, "b", 2)],
    { state: "settled", value: "b", heads: [3] },
  ],
  ["M5 a record that names itself is current", [states(1, p, "a", 1)], { state: "settled", value: "a", heads: [1] }],
  [
    "M5 a record of another subject is not superseded",
    [states(1, p, "a"), states(2, "paper:two", "b", 1)],
    { state: "settled", value: "a", heads: [1] },
  ],
  [
    "M5 naming a record that is not here does no harm",
    [states(2, p, "b", 1)],
    { state: "settled", value: "b", heads: [2] },
  ],
  [
    "M5 a record that arrives after its superseder is not current",
    [states(2, p, "b", 1), states(1, p, "a")],
    { state: "settled", value: "b", heads: [2] },
  ],
  [
    "M6 two records that supersede each other are both current",
    [states(1, p, "a", 2), states(2, p, "b", 1)],
    { state: "disputed", claims: [1, 2] },
  ],
  [
    "M6 a circle still supersedes what is outside it",
    [states(1, p, "a"), states(2, p, "b", 3, 1), states(3, p, "b", 2)],
    { state: "settled", value: "b", heads: [2, 3] },
  ],
  [
    "M6 a record outside a circle supersedes the member it names, and no other",
    [states(1, p, "a", 2), states(2, p, "b", 1), states(3, p, "c", 1)],
    { state: "disputed", claims: [2, 3] },
  ],
  [
    "M7 a record that cannot be read supersedes nothing",
    [states(1, p, "a"), { ...states(2, p, "b", 1), by: "" }],
    { state: "settled", value: "a", heads: [1] },
  ],
  [
    "M8 a record whose id comes with other content gives its place back",
    [states(1, p, "a"), states(2, p, "b", 1), states(2, p, "c", 1)],
    { state: "settled", value: "a", heads: [1] },
  ],
  [
    "M9 a clock that is hours off changes nothing",
    [states(1, p, "a"), { ...states(2, p, "b", 1), at: "1999-01-01T00:00:00Z" }],
    { state: "settled", value: "b", heads: [2] },
  ],
];

const fieldTable: readonly [string, readonly unknown[], Expected][] = [
  [
    "M4 different fields changed apart merge",
    [states(1, m, machine("a", 70)), states(2, m, machine("b", 70), 1), states(3, m, machine("a", 80), 1)],
    { state: "settled", value: machine("b", 80), heads: [2, 3] },
  ],
  [
    "M4 the same field changed apart is disputed and keeps the base's value",
    [states(1, m, machine("a", 70)), states(2, m, machine("b", 70), 1), states(3, m, machine("c", 80), 1)],
    { state: "disputed", claims: [2, 3], fields: { name: [2, 3] }, value: machine("a", 80) },
  ],
  [
    "M4 the same field changed to the same value is no dispute",
    [states(1, m, machine("a", 70)), states(2, m, machine("b", 70), 1), states(3, m, machine("b", 80), 1)],
    { state: "settled", value: machine("b", 80), heads: [2, 3] },
  ],
  [
    "M4 the base is the nearest common ancestor",
    [
      states(1, m, machine("a", 70)),
      states(2, m, machine("b", 70), 1),
      states(3, m, machine("b", 80), 2),
      states(4, m, machine("c", 70), 2),
    ],
    { state: "settled", value: machine("c", 80), heads: [3, 4] },
  ],
  [
    "M4 two edits in a row on one side count against the common base",
    [
      states(1, m, machine("a", 70)),
      states(2, m, machine("b", 70), 1),
      states(3, m, machine("a", 70), 2),
      states(4, m, machine("a", 80), 1),
    ],
    { state: "settled", value: machine("a", 80), heads: [3, 4] },
  ],
  [
    "M4 a field taken away is a change",
    [
      states(1, m, machine("a", 70, { low: 1 })),
      states(2, m, machine("a", 70), 1),
      states(3, m, machine("b", 70, { low: 1 }), 1),
    ],
    { state: "settled", value: machine("b", 70), heads: [2, 3] },
  ],
  [
    "M4 a field taken away on one side and changed on the other is disputed",
    [
      states(1, m, machine("a", 70, { low: 1 })),
      states(2, m, machine("a", 70), 1),
      states(3, m, machine("a", 70, { low: 2 }), 1),
    ],
    { state: "disputed", claims: [2, 3], fields: { low: [2, 3] }, value: machine("a", 70, { low: 1 }) },
  ],
  [
    "M4 three heads dispute only with those that changed the field",
    [
      states(1, m, machine("a", 70)),
      states(2, m, machine("b", 70), 1),
      states(3, m, machine("c", 70), 1),
      states(4, m, machine("a", 80), 1),
    ],
    { state: "disputed", claims: [2, 3, 4], fields: { name: [2, 3] }, value: machine("a", 80) },
  ],
  [
    "M4 without a base every field that differs is disputed, and the value is left out when it lacks them",
    [states(1, m, machine("a", 70)), states(2, m, machine("b", 70))],
    { state: "disputed", claims: [1, 2], fields: { name: [1, 2] } },
  ],
  [
    "M4 without a base the agreed fields stand when the kind accepts them alone",
    [states(1, m, machine("a", 70)), states(2, m, machine("a", 70, { low: 3 }))],
    { state: "disputed", claims: [1, 2], fields: { low: [1, 2] }, value: machine("a", 70) },
  ],
  [
    "M4 two nearest ancestors that merge serve as one base",
    [
      states(1, m, machine("a", 70)),
      states(2, m, machine("b", 70), 1),
      states(3, m, machine("a", 80), 1),
      states(4, m, machine("b", 80, { low: 1 }), 2, 3),
      states(5, m, machine("c", 80), 2, 3),
    ],
    { state: "settled", value: machine("c", 80, { low: 1 }), heads: [4, 5] },
  ],
  [
    "M4 two nearest ancestors in dispute are no base",
    [
      states(1, m, machine("a", 70)),
      states(2, m, machine("b", 70), 1),
      states(3, m, machine("c", 70), 1),
      states(4, m, machine("b", 80), 2, 3),
      states(5, m, machine("b", 90), 2, 3),
    ],
    { state: "disputed", claims: [4, 5], fields: { mass: [4, 5] } },
  ],
  [
    "M4 a merged value that the kind does not accept is a dispute without a value",
    [
      states(1, m, machine("a", 70, { low: 1, high: 9 })),
      states(2, m, machine("a", 70, { low: 8, high: 9 }), 1),
      states(3, m, machine("a", 70, { low: 1, high: 2 }), 1),
    ],
    { state: "disputed", claims: [2, 3] },
  ],
  [
    "M4 the members of a circle have no base in each other",
    [states(1, m, machine("a", 70), 2), states(2, m, machine("b", 70), 1)],
    { state: "disputed", claims: [1, 2], fields: { name: [1, 2] } },
  ],
  [
    "M4 the members of a circle merge with an ancestor that they share",
    [states(1, m, machine("a", 70)), states(2, m, machine("b", 70), 1, 3), states(3, m, machine("a", 80), 1, 2)],
    { state: "settled", value: machine("b", 80), heads: [2, 3] },
  ],
  [
    "M5 a base that names itself is still a base",
    [states(1, m, machine("a", 70), 1), states(2, m, machine("b", 70), 1), states(3, m, machine("a", 80), 1)],
    { state: "settled", value: machine("b", 80), heads: [2, 3] },
  ],
  [
    "M3 a void beside a value is a dispute that still shows the value",
    [states(1, m, machine("a", 70)), voids(2, m, 1), states(3, m, machine("a", 80), 1)],
    { state: "disputed", claims: [2, 3], value: machine("a", 80) },
  ],
];

describe("kinds compared as a whole", () => {
  it.each(wholeTable)("%s", (_, raws, expected) => {
    expect(summary(ledgerOf(raws).current(paperKind, "one"))).toEqual(expected);
    expect(summary(ledgerOf([...raws].reverse()).current(paperKind, "one"))).toEqual(expected);
  });

  it("M2 compares only the fact that the kind names, and shows the lowest id's value", () => {
    const key = "clicks:r1/fork";
    const told = states(2, key, { count: 4, note: "cold" });
    const ledger = ledgerOf([told, states(1, key, { count: 4, note: "warm" })], "rider/r1/2031");
    expect(summary(ledger.current(clicksKind, "r1/fork"))).toEqual({
      state: "settled",
      value: { count: 4, note: "warm" },
      heads: [1, 2],
    });
    ledger.add(states(3, key, { count: 5, note: "cold" }), "rider/r1/2032");
    expect(ledger.current(clicksKind, "r1/fork").state).toBe("disputed");
  });

  it("M6 a circle of many records, each head of which is shown, is read without overflow", () => {
    const many = 20_000;
    const circle = Array.from({ length: many }, (_, n) => states(n, p, "same", (n + 1) % many));
    expect(summary(ledgerOf(circle).current(paperKind, "one"))).toMatchObject({ state: "settled", value: "same" });
    const chain = circle.slice(1).map((record, n) => ({ ...record, value: n, supersedes: [recordId(n)] }));
    expect(numbersOf(ledgerOf([rawRecord(0), ...chain]).heads(paperKind, "one"))).toEqual([many - 1]);
  });
});

describe("kinds merged by fields", () => {
  it.each(fieldTable)("%s", (_, raws, expected) => {
    expect(summary(ledgerOf(raws).current(machineKind, "one"))).toEqual(expected);
    expect(summary(ledgerOf([...raws].reverse()).current(machineKind, "one"))).toEqual(expected);
  });

  it("M4 up to 64 heads have a base, more do not: more disputes are shown, and none is hidden", () => {
    const apart = (heads: number) =>
      Array.from({ length: heads }, (_, n) =>
        states(n + 2, m, machine("a", 70, n % 2 === 0 ? { low: 1 } : { high: 9 }), 1),
      );
    const base = states(1, m, machine("a", 70));
    const few = ledgerOf([base, ...apart(64)]).current(machineKind, "one");
    expect(summary(few)).toMatchObject({ state: "settled", value: machine("a", 70, { low: 1, high: 9 }) });
    const many = ledgerOf([base, ...apart(65)]).current(machineKind, "one");
    expect(summary(many)).toMatchObject({ state: "disputed", value: machine("a", 70) });
    expect(many.state === "disputed" && Object.keys(many.fields ?? {})).toEqual(["high", "low"]);
  });
});
