import fc from "fast-check";
import { describe, expect, it } from "vitest";
import * as z from "zod/mini";
import { createKindRegistry, defineKind } from "#core/ledger/kind.ts";
import { createLedger, type Ledger } from "#core/ledger/ledger.ts";
import { onceForEachOwner, onceForEachState } from "#core/ledger/once-for-each-state.ts";
import { rawRecord } from "./ledger-fixture.ts";

const scores = defineKind({ kind: "score", scope: "rider", merge: "whole", schema: z.number() });
const names = defineKind({ kind: "name", scope: "team", merge: "whole", schema: z.string() });

/** What stands under the keys of one owner, or of all, read anew. */
function read(ledger: Ledger, owner?: string): readonly unknown[] {
  return ledger.keys(scores, owner).map((key) => [key, ledger.current(scores, key)]);
}

describe("what follows from records", () => {
  it("is what reading them anew gives, whatever arrives, conflicts and withdrawals among it", () => {
    const arrivals = fc.array(
      fc.record({
        // Few ids, so that the same one comes with different contents.
        id: fc.integer({ min: 1, max: 12 }),
        owner: fc.constantFrom("ann", "bea"),
        key: fc.constantFrom("x", "y"),
        value: fc.integer({ min: 0, max: 3 }),
        supersedes: fc.array(fc.integer({ min: 1, max: 12 }), { maxLength: 2 }),
      }),
      { maxLength: 20 },
    );
    fc.assert(
      fc.property(arrivals, (records) => {
        const ledger = createLedger(createKindRegistry([scores, names]));
        const ofOwner = onceForEachOwner([scores], read);
        const ofAll = onceForEachState([scores], (all) => read(all));
        for (const { id, owner, key, value, supersedes } of records) {
          const others = supersedes.filter((other) => other !== id).map((other) => rawRecord(other).id);
          ledger.add(
            rawRecord(id, { subject: `score:${owner}/${key}`, value, supersedes: [...new Set(others)] }),
            `rider/${owner}/2026`,
          );
          for (const each of ["ann", "bea", "nobody"]) expect(ofOwner(ledger, each)).toEqual(read(ledger, each));
          expect(ofAll(ledger)).toEqual(read(ledger));
          expect(ledger.keys(scores)).toEqual(ledger.owners(scores).flatMap((each) => ledger.keys(scores, each)));
        }
      }),
    );
  });

  it("is worked out again for a change of its own kinds and owner, and for no other", () => {
    const ledger = createLedger(createKindRegistry([scores, names]));
    const counts = { ann: 0, all: 0 };
    const ofOwner = onceForEachOwner([scores], (all, owner) => {
      counts.ann++;
      return read(all, owner);
    });
    const ofAll = onceForEachState([scores], (all) => {
      counts.all++;
      return read(all);
    });
    const ask = (): void => {
      ofOwner(ledger, "ann");
      ofAll(ledger);
    };
    ask();
    ask();
    ledger.add(rawRecord(1, { subject: "name:a", value: "A" }), "team");
    ask();
    expect(counts).toEqual({ ann: 1, all: 1 });
    ledger.add(rawRecord(2, { subject: "score:bea/x", value: 1 }), "rider/bea/2026");
    ask();
    expect(counts).toEqual({ ann: 1, all: 2 });
    ledger.add(rawRecord(3, { subject: "score:ann/x", value: 1 }), "rider/ann/2026");
    ask();
    expect(counts).toEqual({ ann: 2, all: 3 });
  });
});
