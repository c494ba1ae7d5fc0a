import { afterEach, describe, expect, test } from "vitest";
import { goBackEntries, goBackPlan, goBackValue, tickEntries } from "#client/pit/bench-entries.ts";
import { byHandEntries } from "#client/pit/by-hand.ts";
import { type ActorForRider, lastOwnAction } from "#client/pit/last-own-action.ts";
import { onTheBikeText, rowFacts } from "#client/pit/row-facts.ts";
import { showUnits } from "#client/text/shown-units.ts";
import { trade } from "#client/text/trade.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { Writer } from "#core/ledger/write.ts";
import type { EntriesResult } from "#core/planning/entries.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { conditionsKind, decisionKind, runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { arriveFromElsewhere, keyOf, MAIN, occasionFor, REBOUND, SECONDARY, sheetFor } from "./pit-team.ts";

const actor: ActorForRider = { riderId: "alder", memberId: "mia", deviceId: "mia" };

function write(writer: Writer, result: EntriesResult) {
  if (!result.ok) throw new Error(result.problem.type);
  return written(writer.setMany(result.entries));
}

/** A mechanic with the course entered; the bench is colder than the session, and the rider has baselines for two types. */
function coldMorning(): { team: TeamLedger; mia: Writer } {
  const team = teamLedger();
  const mia = team.writerFor("mia");
  enterCourse(mia, { steep: 0.5, jumpy: 0.5, wet: 0 });
  const cold = { air: { value: 25, unit: "°C" }, bench: { value: 5, unit: "°C" }, ground: "dry" } as const;
  written(mia.set(conditionsKind, "kestrel/p1", cold));
  return { team, mia };
}

function tickAll(team: TeamLedger, mia: Writer) {
  const sheet = sheetFor(team);
  return write(mia, tickEntries(sheet, occasionFor(team), sheet.sequence.steps));
}

function settingAt({ ledger }: TeamLedger, path: AdjusterPath) {
  return settledValue(ledger.current(settingKind, keyOf(path)));
}

describe("ticking off", () => {
  test("puts the bench value on the bike, read at the bench, for the session of the sheet", () => {
    const { team, mia } = coldMorning();
    const records = tickAll(team, mia);
    const sheet = sheetFor(team);
    const bench = sheet.rows.find(({ path }) => path === MAIN)?.bench;
    expect(settingAt(team, MAIN)).toEqual({
      quantity: bench,
      standing: "on the bike",
      weekend: "kestrel",
      session: "p1",
      heldAt: { temperature: { value: 5, unit: "°C" }, altitude: { value: 0, unit: "m" } },
    });
    expect(new Set(records.map(({ cause }) => JSON.stringify(cause)))).toEqual(
      new Set(['{"type":"conditions","session":"p1"}']),
    );
    expect(sheet.sequence.steps).toEqual([]);
  });
});

describe("going back", () => {
  test("to the baseline is to its reading at the cold bench, so that it is right at the warm session", () => {
    const { team } = coldMorning();
    const sheet = sheetFor(team);
    const row = sheet.rows.find(({ path }) => path === MAIN);
    if (!row?.baseline) throw new Error("The sheet has no baseline for the main pressure.");
    const value = goBackValue(sheet, row, "baseline");
    expect(value?.unit).toBe(row.baseline.unit);
    expect(value?.value).toBeLessThan(row.baseline.value);
  });

  test("to the weekend setup undoes what was changed by hand, and names the session", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    const before = settingAt(team, MAIN)?.quantity;
    if (!before) throw new Error("The main pressure was not set.");
    const changed = { path: MAIN, value: before.value + 3, note: "" };
    write(mia, byHandEntries(occasionFor(team), changed));
    expect(goBackPlan(sheetFor(team), occasionFor(team).onTheBike, "weekend").steps.map(({ path }) => path)).toEqual([
      MAIN,
    ]);
    const [record] = write(mia, goBackEntries(sheetFor(team), occasionFor(team), "weekend"));
    expect(settingAt(team, MAIN)?.quantity).toEqual(before);
    expect(record?.cause).toEqual({ type: "conditions", session: "p1" });
  });

  test("to the baseline names the course types that it blends", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    write(mia, byHandEntries(occasionFor(team), { path: REBOUND, value: 12, note: "" }));
    const records = write(mia, goBackEntries(sheetFor(team), occasionFor(team), "baseline", REBOUND));
    expect(records.map(({ subject, cause }) => [subject, cause])).toEqual([
      [`setting:${keyOf(REBOUND)}`, { type: "own baseline", courseTypes: ["steep", "jumpy"] }],
    ]);
  });

  test("leaves an adjuster in dispute alone and says so", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    const seen = team.ledger.heads(settingKind, keyOf(REBOUND)).map(({ id }) => id);
    write(mia, byHandEntries(occasionFor(team), { path: REBOUND, value: 12, note: "" }));
    arriveFromElsewhere(team, REBOUND, { value: 10, unit: "clicks" }, seen);
    const plan = goBackPlan(sheetFor(team), occasionFor(team).onTheBike, "baseline");
    expect(plan.leftOut).toEqual([REBOUND]);
    expect(plan.steps.map(({ path }) => path)).not.toContain(REBOUND);
  });

  test("keeps the secondary chamber above the main one after every step", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    write(mia, byHandEntries(occasionFor(team), { path: SECONDARY, value: 200, note: "" }));
    write(mia, byHandEntries(occasionFor(team), { path: MAIN, value: 108, note: "" }));
    const { onTheBike } = occasionFor(team);
    const state: Partial<Record<AdjusterPath, number>> = {
      [MAIN]: onTheBike[MAIN]?.value ?? 0,
      [SECONDARY]: onTheBike[SECONDARY]?.value ?? 0,
    };
    const { steps, blocked } = goBackPlan(sheetFor(team), onTheBike, "weekend");
    expect(blocked).toEqual([]);
    expect(steps.map(({ path }) => path)).toEqual(expect.arrayContaining([MAIN, SECONDARY]));
    for (const { path, to } of steps) {
      state[path] = to.value;
      expect(state[SECONDARY]).toBeGreaterThanOrEqual((state[MAIN] ?? 0) + 5);
    }
  });
});

describe("a value by hand", () => {
  afterEach(() => showUnits({}));

  test("that stands in the field as it was shown is the value itself, also at the end of the part's range", () => {
    const { team } = coldMorning();
    showUnits({ pressure: "bar" });
    // 220 psi are 15.168 bar: what the field shows of the part's own maximum is beyond it.
    const from = { value: 220, unit: "psi" } as const;
    const entries = byHandEntries(occasionFor(team), { path: SECONDARY, value: 15.17, from, note: "" });
    expect(entries).toMatchObject({ ok: true, entries: [{ value: { quantity: from } }] });
    const typed = byHandEntries(occasionFor(team), { path: SECONDARY, value: 15.1, from, note: "" });
    expect(typed).toMatchObject({ ok: true, entries: [{ value: { quantity: { value: 15.1, unit: "bar" } } }] });
  });

  test("that the part does not allow is refused with its limit, and nothing is written", () => {
    const { team } = coldMorning();
    const result = byHandEntries(occasionFor(team), { path: MAIN, value: 400, note: "" });
    expect(result.ok ? "" : trade.entryProblem(result.problem)).toBe(
      "Fork main pressure: 400 psi is outside the part's range of 20 psi to 110 psi.",
    );
  });

  test("that was emptied is asked for", () => {
    const { team } = coldMorning();
    const result = byHandEntries(occasionFor(team), { path: MAIN, value: undefined, note: "" });
    expect(result.ok ? "" : trade.entryProblem(result.problem)).toBe("Fork main pressure: enter a value.");
  });

  test("on a run's card names the run and answers it", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: {}, rear: {} };
    written(mia.set(runKind, "alder/run-1", run));
    const [logged] = loggedRuns(team.ledger, "kestrel", "alder");
    const records = write(
      mia,
      byHandEntries(occasionFor(team), { path: REBOUND, value: 3, note: " too fast " }, logged),
    );
    expect(records[0]?.cause).toEqual({ type: "by hand", note: "too fast", run: "run-1" });
    expect(settledValue(team.ledger.current(decisionKind, "alder/run-1"))).toEqual({ outcome: "adjusted" });
    expect(lastOwnAction(team.ledger, actor)?.records).toHaveLength(2);
  });
});

describe("the undo of the last own act", () => {
  test("is the whole batch, and after it the one before", () => {
    const { team, mia } = coldMorning();
    const ticked = tickAll(team, mia);
    write(mia, byHandEntries(occasionFor(team), { path: REBOUND, value: 3, note: "" }));
    const last = lastOwnAction(team.ledger, actor);
    expect(last?.what).toBe("Fork rebound 3 clicks");
    for (const { id } of last?.records ?? []) written(mia.revert(id));
    expect(lastOwnAction(team.ledger, actor)?.what).toBe(`${ticked.length - 1} settings`);
  });

  test("never takes back what somebody else, or another device, has done", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    const nils = team.writerFor("nils");
    for (const path of sheetFor(team).rows.map((row) => row.path)) {
      const setting = settingAt(team, path);
      if (setting) written(nils.setMany([{ kind: settingKind, key: keyOf(path), value: setting }], { force: true }));
    }
    expect(lastOwnAction(team.ledger, actor)).toBeUndefined();
    expect(lastOwnAction(team.ledger, { ...actor, memberId: "nils", deviceId: "another" })).toBeUndefined();
  });

  test("does not offer to take back what settled a dispute: there was no one value before", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    const seen = team.ledger.heads(settingKind, keyOf(REBOUND)).map(({ id }) => id);
    write(mia, byHandEntries(occasionFor(team), { path: REBOUND, value: 12, note: "" }));
    arriveFromElsewhere(team, REBOUND, { value: 10, unit: "clicks" }, seen);
    written(
      mia.resolve(settingKind, keyOf(REBOUND), { quantity: { value: 10, unit: "clicks" }, standing: "on the bike" }),
    );
    expect(lastOwnAction(team.ledger, actor)).toBeUndefined();
  });
});

describe("a row of the sheet", () => {
  test("names the bench only where it differs, and what the bike reads once the bench is warmer", () => {
    const { team, mia } = coldMorning();
    tickAll(team, mia);
    const rowAt = (session: string, path: AdjusterPath) => {
      const row = sheetFor(team, session).rows.find((candidate) => candidate.path === path);
      if (!row) throw new Error(`The sheet has no ${path}.`);
      return rowFacts(row, occasionFor(team, session).onTheBike[path]).map(({ label }) => label);
    };
    expect(rowAt("p1", MAIN)).toEqual(["Blend of baselines", "Weekend", "At the bench", "On the bike"]);
    expect(rowAt("p1", REBOUND)).toEqual(["Blend of baselines", "Weekend", "On the bike"]);
    expect(rowAt("race", MAIN)).toEqual(["Blend of baselines", "Weekend", "On the bike", "Reads now"]);
  });

  test("says in words that nothing is known, or that it is in dispute", () => {
    expect(onTheBikeText({ current: { state: "absent" } })).toBe("not known");
    expect(onTheBikeText({ current: { state: "disputed", claims: [], heads: [] } })).toBe("in dispute");
  });
});
