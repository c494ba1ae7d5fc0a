import fc from "fast-check";
import { beforeEach, describe, expect, test } from "vitest";
import { checkValue } from "#core/advice/limits.ts";
import { backToMoment, backToMomentEntries } from "#core/planning/back-to-moment.ts";
import {
  beforeWeekend,
  differencesBetween,
  type Moment,
  momentsOf,
  settingsAt,
} from "#core/planning/bike-at-moment.ts";
import { describeEntryProblem } from "#core/planning/entries.ts";
import type { TypedQuantity } from "#core/quantity/unit.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { partKind } from "#core/team/record-kinds.ts";
import { mountedAdjusters, riderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { setupValues, twoChamberFork } from "#tests/builders/bike.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const bench = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
const MAIN: AdjusterPath = "fork.main-pressure";
const SECONDARY: AdjusterPath = "fork.secondary-pressure";
const REBOUND: AdjusterPath = "fork.rebound";

let team: TeamLedger;

beforeEach(() => {
  team = teamLedger();
});

function put(values: SetupValues, weekend = "kestrel", heldAt?: Surroundings) {
  const entries = Object.entries(values).map(([path, quantity]) => ({
    kind: settingKind,
    key: `alder/alder-1/${path}`,
    value: { quantity, standing: "on the bike", weekend, ...(heldAt && { heldAt }) },
  }));
  return written(team.writerFor("mia").setMany(entries as never));
}

function mounted() {
  const found = riderBike(team.ledger, "alder");
  if (!found) throw new Error("The builder's team has no rider alder.");
  return found;
}

const psi = (value: number): TypedQuantity => ({ value, unit: "psi" });
const clicks = (value: number): TypedQuantity => ({ value, unit: "clicks" });
const at = (moment: Moment) => settingsAt(team.ledger, mounted(), moment);
const now = () => settingsOnBike(team.ledger, mounted());
const differences = (moment: Moment) =>
  differencesBetween(mounted(), at(moment), now(), bench).map(({ path, earlier, later, difference }) => [
    path,
    earlier,
    later,
    difference?.value,
  ]);
const beforeKestrel = () => beforeWeekend(momentsOf(team.ledger, mounted()), "kestrel");
const wayBack = (moment: Moment) => backToMoment(mounted(), at(moment), now(), bench);
const occasion = () => ({
  mounted: mounted(),
  weekendId: "kestrel",
  sessionId: "p1",
  heldAt: bench,
  onTheBike: valuesOnBike(now()),
});

describe("the moments of a bike's changelog", () => {
  test("are what was written together, newest first", () => {
    put(setupValues);
    put({ [MAIN]: psi(62) });
    expect(momentsOf(team.ledger, mounted()).map(({ changes }) => changes.length)).toEqual([
      1,
      Object.keys(setupValues).length,
    ]);
  });

  test("tell what differs between before the weekend and now, with both values", () => {
    put(setupValues, "otter");
    put({ [MAIN]: psi(62), [REBOUND]: clicks(7) });
    put({ [REBOUND]: clicks(8) });
    expect(differences(beforeKestrel())).toEqual([[MAIN, psi(60), psi(62), 2]]);
  });

  test("have nothing that differs while nothing was changed on the weekend", () => {
    put(setupValues, "otter");
    expect(beforeKestrel()).toEqual({ is: "now" });
    expect(differences(beforeKestrel())).toEqual([]);
  });

  test("say that nothing was known before the first entry, and that two people said different things", () => {
    put({ [MAIN]: psi(60) });
    const first = momentsOf(team.ledger, mounted())[0]?.moment as Moment;
    expect(differences(beforeKestrel())).toEqual([[MAIN, "unknown", psi(60), undefined]]);
    const value = { quantity: psi(70), standing: "on the bike" };
    const subject = `setting:alder/alder-1/${MAIN}`;
    const envelope = { version: 1, id: "02000000000000000000000001", by: "nils", device: "phone", supersedes: [] };
    team.ledger.add({ ...envelope, subject, value, at: "2026-05-30T09:00:00Z" }, "rider/alder/2026");
    expect(differences(first)).toEqual([[MAIN, psi(60), "disputed", undefined]]);
  });

  test("compare pressures as they read at the bench: 60 psi at 20 °C and 52.4 psi at -10 °C are the same air", () => {
    put({ [MAIN]: psi(60) }, "otter", bench);
    put({ [MAIN]: psi(52.4) }, "kestrel", { temperature: { value: -10, unit: "°C" }, altitude: bench.altitude });
    expect(differences(beforeKestrel())).toEqual([]);
  });

  test("go by the writers' clocks, and by id only among equal times", () => {
    put({ [REBOUND]: clicks(8) });
    const moment = momentsOf(team.ledger, mounted())[0]?.moment as Moment;
    // The id of a device whose clock was behind when it made ids sorts before all others; its record came an hour later.
    const envelope = { version: 1, id: "00000000000000000000000001", by: "nils", device: "phone" };
    const supersedes = team.ledger.heads(settingKind, `alder/alder-1/${REBOUND}`).map(({ id }) => id);
    const value = { quantity: clicks(5), standing: "on the bike" };
    const subject = `setting:alder/alder-1/${REBOUND}`;
    team.ledger.add({ ...envelope, subject, supersedes, value, at: "2026-05-30T09:00:00Z" }, "rider/alder/2026");
    expect(differences(moment)).toEqual([[REBOUND, clicks(8), clicks(5), -3]]);
  });

  test("are each what was current when the device had written until there", () => {
    fc.assert(
      fc.property(fc.array(fc.tuple(fc.boolean(), fc.integer({ min: 0, max: 16 })), { maxLength: 12 }), (acts) => {
        team = teamLedger();
        const seen: [SetupValues, Moment][] = [];
        for (const [isFork, count] of acts) {
          const records = put({ [isFork ? REBOUND : "shock.rebound"]: clicks(count) });
          const last = records[0];
          if (last) seen.push([valuesOnBike(now()), { is: "after", change: last }]);
        }
        for (const [values, moment] of seen) expect(valuesOnBike(at(moment))).toEqual(values);
      }),
      { numRuns: 100 },
    );
  });
});

describe("the way back to a moment", () => {
  test("puts the whole bike back in one batch, and is itself a moment to go back from", () => {
    put(setupValues, "otter");
    put({ [MAIN]: psi(64), [SECONDARY]: psi(120), [REBOUND]: clicks(5) });
    const before = momentsOf(team.ledger, mounted())[0]?.moment as Moment;
    const plan = wayBack(beforeKestrel());
    const entries = backToMomentEntries(occasion(), plan, "Back to: before.");
    if (!entries.ok) throw new Error(entries.problem.type);
    const records = written(team.writerFor("mia").setMany(entries.entries));
    expect(new Set(records.map(({ batch }) => batch)).size).toBe(1);
    expect(valuesOnBike(now())).toEqual(setupValues);
    expect(records[0]?.cause).toEqual({ type: "by hand", note: "Back to: before." });
    expect(differences(before)).toHaveLength(3);
  });

  test("takes an order in which the secondary chamber stays above the main one after every step", () => {
    const pressure = fc.integer({ min: 20, max: 100 });
    fc.assert(
      fc.property(
        pressure,
        pressure,
        fc.integer({ min: 5, max: 100 }),
        fc.integer({ min: 5, max: 100 }),
        (a, b, c, d) => {
          team = teamLedger();
          put({ [MAIN]: psi(a), [SECONDARY]: psi(a + c) }, "otter");
          put({ [MAIN]: psi(b), [SECONDARY]: psi(b + d) });
          let state: SetupValues = valuesOnBike(now());
          const plan = wayBack(beforeKestrel());
          expect(plan.blocked).toEqual([]);
          for (const { path, to } of plan.steps) {
            expect(checkValue(mounted(), path, to, state)).toBeUndefined();
            state = { ...state, [path]: to };
          }
          expect(state).toEqual({ [MAIN]: psi(a), [SECONDARY]: psi(a + c) });
        },
      ),
      { numRuns: 100 },
    );
  });

  test("leaves alone what nothing is known of, and what is in dispute", () => {
    put({ [MAIN]: psi(60), [REBOUND]: clicks(8) }, "otter");
    put({ [MAIN]: psi(64), [SECONDARY]: psi(120), [REBOUND]: clicks(5) });
    const value = { quantity: clicks(9), standing: "on the bike" };
    const envelope = { version: 1, id: "02000000000000000000000001", by: "nils", device: "phone", supersedes: [] };
    const subject = `setting:alder/alder-1/${REBOUND}`;
    team.ledger.add({ ...envelope, subject, value, at: "2026-05-30T09:00:00Z" }, "rider/alder/2026");
    const plan = wayBack(beforeKestrel());
    expect(plan.steps.map(({ path }) => path)).toEqual([MAIN]);
    expect(plan.disputed).toEqual([REBOUND]);
    expect(plan.unknownThen).toContain(SECONDARY);
    expect([...plan.unknownThen, ...plan.disputed, MAIN].sort()).toEqual(
      mountedAdjusters(mounted().parts)
        .map(({ path }) => path)
        .sort(),
    );
  });

  test("is refused as a whole, with the limit, when the part that is on the bike now does not allow it", () => {
    put({ [MAIN]: psi(100), [SECONDARY]: psi(150) }, "otter");
    put({ [MAIN]: psi(64), [SECONDARY]: psi(120) });
    const adjusters = twoChamberFork.adjusters.map((adjuster) =>
      adjuster.kind === "main-pressure" ? { ...adjuster, maximum: 90 } : adjuster,
    );
    written(team.writerFor("mia").set(partKind, "fork-1", { ...twoChamberFork, adjusters }));
    const entries = backToMomentEntries(occasion(), wayBack(beforeKestrel()), "Back.");
    expect(entries.ok ? "" : describeEntryProblem(entries.problem)).toContain("100 psi is outside");
  });
});
