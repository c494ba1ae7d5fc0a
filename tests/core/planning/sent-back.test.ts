import { beforeEach, describe, expect, test } from "vitest";
import { settledValue } from "#core/ledger/ledger.ts";
import { proposeBaseline } from "#core/planning/baseline-review.ts";
import { sendBackEntry, standingSendBacks } from "#core/planning/sent-back.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import { baselineKind, sentBackKind } from "#core/team/record-kinds.ts";
import { riderBike } from "#core/team/roster.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { setupValues } from "#tests/builders/bike.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const ride = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
const MAIN = "alder/alder-1/fork.main-pressure";
let team: TeamLedger;

beforeEach(() => {
  team = teamLedger();
  for (const path of Object.keys(setupValues) as (keyof typeof setupValues)[]) {
    set(`alder/alder-1/${path}`, setupValues[path] as TypedQuantity);
  }
  set(MAIN, { value: 64, unit: "psi" });
});

function set(key: string, quantity: TypedQuantity) {
  const value = { quantity, standing: "on the bike" as const, weekend: "kestrel" };
  return written(team.writerFor("mia").set(settingKind, key, value));
}

function mounted() {
  const found = riderBike(team.ledger, "alder");
  if (!found) throw new Error("The builder's team has no rider alder.");
  return found;
}

const heather = () => team.writerFor("heather");
const sendBack = (note = "Ride it once more.") =>
  written(heather().setMany([sendBackEntry(team.ledger, mounted(), "steep", "kestrel", note)]));
const standing = () => standingSendBacks(team.ledger, mounted()).map(({ type, record }) => [type, record.value?.note]);

function approve() {
  const result = proposeBaseline(team.ledger, mounted(), "steep", "kestrel", ride);
  if (!result.ok) throw new Error(result.why.join(" "));
  return written(heather().setMany([result.proposal.entry]));
}

describe("a setup that was sent back", () => {
  test("stands with its note while it is what is on the bike", () => {
    sendBack("  Ride it once more. ");
    expect(standing()).toEqual([["steep", "Ride it once more."]]);
  });

  test("is gone with a new proposal, and there again when the bike is put back to what was sent back", () => {
    sendBack();
    set(MAIN, { value: 62, unit: "psi" });
    expect(standing()).toEqual([]);
    set(MAIN, { value: 64, unit: "psi" });
    expect(standing()).toHaveLength(1);
  });

  test("is gone when a sag was measured since, which is a new proposal too", () => {
    sendBack();
    const setup = Object.keys(setupValues).map(
      (path) => team.ledger.heads(settingKind, `alder/alder-1/${path}`)[0]?.id ?? "",
    );
    const front = { sag: { value: 34, unit: "mm" } };
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", setup, front, rear: {} } as const;
    written(team.writerFor("mia").set(runKind, "alder/r1", run as never));
    expect(standing()).toEqual([]);
  });

  test("is gone when it is approved, and there again when that is undone", () => {
    sendBack();
    const [approved] = approve();
    expect(standing()).toEqual([]);
    written(heather().revert(approved?.id ?? ""));
    expect(standing()).toHaveLength(1);
  });

  test("stands although an earlier setup of the same weekend was approved", () => {
    approve();
    set(MAIN, { value: 66, unit: "psi" });
    sendBack();
    expect(standing()).toHaveLength(1);
    approve();
    expect(standing()).toEqual([]);
  });

  test("is approved by another manager apart: the approval holds", () => {
    const entry = sendBackEntry(team.ledger, mounted(), "steep", "kestrel", "Not yet.");
    approve();
    written(heather().setMany([entry]));
    expect(standing()).toEqual([]);
  });

  test("stays while somebody else's value is in dispute, since nobody knows yet what is on the bike", () => {
    sendBack();
    const record = {
      ...{ version: 1, id: "02000000000000000000000001", subject: `setting:${MAIN}`, supersedes: [] },
      ...{ by: "nils", device: "phone", at: "2026-05-29T09:59:00.000Z" },
      value: { quantity: { value: 70, unit: "psi" }, standing: "on the bike" },
    };
    team.ledger.add(record, "rider/alder/2026");
    expect(standing()).toHaveLength(1);
  });

  test("shows both notes that two managers wrote apart", () => {
    sendBack("Soften the fork.");
    const value = settledValue(team.ledger.current(sentBackKind, "alder/steep"));
    const record = {
      ...{ version: 1, id: "02000000000000000000000001", subject: "sent-back:alder/steep", supersedes: [] },
      ...{ by: "lou", device: "tablet", at: "2026-05-29T09:59:00.000Z" },
      value: { ...value, note: "Stiffen the fork." },
    };
    team.ledger.add(record, "team");
    expect(standing()).toEqual([
      ["steep", "Soften the fork."],
      ["steep", "Stiffen the fork."],
    ]);
  });

  test("changes neither the bike nor the baseline", () => {
    const before = [team.ledger.heads(settingKind, MAIN), team.ledger.heads(baselineKind, "alder/steep")];
    sendBack();
    expect([team.ledger.heads(settingKind, MAIN), team.ledger.heads(baselineKind, "alder/steep")]).toEqual(before);
  });

  test.each(["", "   "])("is refused with the note %j", (note) => {
    const entry = sendBackEntry(team.ledger, mounted(), "steep", "kestrel", note);
    expect(heather().setMany([entry])).toMatchObject({ ok: false, problem: { type: "bad value" } });
  });
});
