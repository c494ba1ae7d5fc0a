import { describe, expect, test } from "vitest";
import { whoHasLines } from "#client/pit/who-has-lines.ts";
import { holdingInWords } from "#client/widgets/holding-in-words.ts";
import type { SetupHolder } from "#core/planning/who-has.ts";
import { memberKind } from "#core/team/record-kinds.ts";
import { teamLedger, written } from "#tests/builders/team-ledger.ts";

function holder(name: string, missing: number): SetupHolder {
  return { memberId: name.toLowerCase(), member: { name, role: "mechanic" }, missing };
}

describe("who has what is on the bike, in words", () => {
  test("names those who have all of it and those who have not, with how much is missing", () => {
    const holders = [holder("Kim", 0), holder("Lou", 0), holder("Rowan", 2), holder("Sol", 14)];
    expect(whoHasLines({ settings: 14, holders })).toEqual({
      all: "Proven to be with Kim, Lou.",
      notYet: "Not yet with Rowan (2 of 14 missing), Sol.",
    });
  });

  test("leaves out a sentence that would name nobody", () => {
    expect(whoHasLines({ settings: 3, holders: [holder("Kim", 0)] })?.notYet).toBeUndefined();
    expect(whoHasLines({ settings: 3, holders: [holder("Kim", 3)] })?.all).toBeUndefined();
  });

  test("says nothing while nothing is on the bike", () => {
    expect(whoHasLines({ settings: 0, holders: [holder("Kim", 0)] })).toBeUndefined();
    expect(whoHasLines(undefined)).toBeUndefined();
  });
});

describe("where an entry is, in words", () => {
  const { ledger, writerFor } = teamLedger();
  written(writerFor("mia").set(memberKind, "kim", { name: "Kim", role: "mechanic" }));
  const here = { isThis: true, member: "mia" };
  const kim = { isThis: false, member: "kim" };

  test.each([
    [
      { server: true, devices: [here, kim, kim, { isThis: false, member: "mia" }] },
      "On the server, and with Kim, Mia.",
    ],
    [{ server: true, devices: [here] }, "On the server; no other device yet."],
    [{ server: false, devices: [here, kim] }, "Not yet on the server; with Kim."],
    [{ server: false, devices: [here] }, "On this device only."],
    [{ server: true, devices: [kim] }, "Not saved on this device. On the server, and with Kim."],
    [{ server: false, devices: [] }, "Not saved on this device. Nowhere else yet."],
    [
      { server: true, devices: [here, { isThis: false, member: undefined }, { isThis: false, member: "gone" }] },
      "On the server, and with gone, 1 device without a name.",
    ],
  ])("%j is: %s", (holding, sentence) => {
    expect(holdingInWords(ledger, holding)).toBe(sentence);
  });
});
