import { describe, expect, test } from "vitest";
import * as z from "zod/mini";
import { describeLedgerProblem } from "#core/ledger/write.ts";
import { courseSchema } from "#core/weekend/course.ts";
import { courseKind } from "#core/weekend/record-kinds.ts";
import { teamLedger } from "#tests/builders/team-ledger.ts";

const altitude = { value: 1950, unit: "m" } as const;

function sentenceFor(mix: { steep: number; jumpy: number; wet: number }): string {
  const result = teamLedger().writerFor("mia").set(courseKind, "kestrel", { mix, altitude });
  return result.ok ? "" : describeLedgerProblem(result.problem);
}

describe("a course's mix", () => {
  test("is taken when its parts add up to 1, to what two decimals can say", () => {
    expect(z.safeParse(courseSchema, { mix: { steep: 0.33, jumpy: 0.33, wet: 0.33 }, altitude }).success).toBe(true);
  });

  test("is refused with what it adds up to", () => {
    expect(sentenceFor({ steep: 0.5, jumpy: 0.3, wet: 0.1 })).toContain("must add up to 1, not 0.9");
  });

  test("says of a part that is too large that it is too large, not that it is no number", () => {
    expect(sentenceFor({ steep: 1.5, jumpy: 0, wet: 0 })).toContain("a part is 1 or less");
    expect(sentenceFor({ steep: -0.5, jumpy: 1, wet: 0.5 })).toContain("a part is 0 or more");
  });
});
