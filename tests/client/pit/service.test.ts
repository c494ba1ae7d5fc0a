import { createRoot } from "solid-js";
import { beforeEach, describe, expect, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { createActs } from "#client/pit/create-acts.ts";
import { createService } from "#client/pit/create-service.ts";
import { createServiceForm, type ServiceFormState } from "#client/pit/create-service-form.ts";
import { disputeLines } from "#client/pit/dispute-lines.ts";
import { lastOwnAction } from "#client/pit/last-own-action.ts";
import type { ServicePartLine, ServicePlace } from "#client/pit/service-lines.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { serviceKind, servicePlanKind } from "#core/planning/service-kinds.ts";
import { riderBike } from "#core/team/roster.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { programme } from "#core/weekend/programme.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { setupValues } from "#tests/builders/bike.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { arriveFromElsewhere, keyOf, MAIN, REBOUND } from "./pit-team.ts";

let team: TeamLedger;

beforeEach(() => {
  team = teamLedger();
  enterCourse(team.writerFor("mia"));
  for (const [path, quantity] of Object.entries(setupValues)) {
    const value = { quantity, standing: "on the bike" as const };
    written(team.writerFor("nils").set(settingKind, keyOf(path as keyof typeof setupValues), value));
  }
});

function bench() {
  const mia = team.writerFor("mia");
  const device: Pick<Device, "ledger" | "write"> = {
    ledger: () => team.ledger,
    write: (entries, options) => mia.setMany(entries, options),
  };
  const mounted = () => riderBike(team.ledger, "alder");
  const settings = () => settingsOnBike(team.ledger, mounted() as NonNullable<ReturnType<typeof mounted>>);
  return {
    device,
    mounted,
    settings,
    acts: createActs(device as Device),
    chosen: { programme: () => programme(team.ledger, "kestrel") },
    disputed: () => [...settings()].filter(([, { state }]) => state === "disputed").map(([path]) => path),
  };
}

function withForm(place: ServicePlace, act: (form: ServiceFormState, notice: () => string | undefined) => void) {
  createRoot((dispose) => {
    const shown = bench();
    act(createServiceForm({ bench: shown, place, newId: () => "service-1" }), shown.acts.notice);
    dispose();
  });
}

function partsShown(): readonly ServicePartLine[] {
  return createRoot((dispose) => {
    const parts = createService(bench()).parts();
    dispose();
    return parts;
  });
}

/** Runs of an hour on dry ground. */
function ride(hours: number): void {
  for (let run = 1; run <= hours; run += 1) {
    const value = { bike: "alder-1", weekend: "kestrel", session: "p1", timeSeconds: 3600, front: {}, rear: {} };
    written(team.writerFor("nils").set(runKind, `alder/run-${run}`, value));
  }
}

const onTheBike = () => valuesOnBike(bench().settings());
const serviceDone = () => settledValue(team.ledger.current(serviceKind, "alder/service-1"));
const actor = { riderId: "alder", memberId: "mia", deviceId: "mia" };

describe("writing a service down", () => {
  test("takes what is on the bike with it, and says what was written", () => {
    const before = onTheBike();
    withForm("fork", (form, notice) => {
      expect(form.works()).toEqual(["bath oil", "complete"]);
      expect(form.settings()).toContain("Fork main pressure: 60 psi");
      form.set({ what: "bath oil", hoursBefore: 12, note: " new wipers " });
      expect(form.save()).toBe(true);
      expect(notice()).toBe("Written down: Fork, bath oil of the lower legs");
    });
    expect(Object.keys(before)).toHaveLength(Object.keys(setupValues).length);
    expect(serviceDone()).toEqual({
      bike: "alder-1",
      place: "fork",
      part: "fork-1",
      what: "bath oil",
      hoursBefore: 12,
      settings: before,
      weekend: "kestrel",
      note: "new wipers",
    });
  });

  test("leaves out what is in dispute, and names it before", () => {
    const seen = team.ledger.heads(settingKind, keyOf(REBOUND)).map(({ id }) => id);
    written(
      team
        .writerFor("nils")
        .set(settingKind, keyOf(REBOUND), { quantity: { value: 3, unit: "clicks" }, standing: "on the bike" }),
    );
    arriveFromElsewhere(team, REBOUND, { value: 12, unit: "clicks" }, seen);
    withForm("shock", (form) => {
      expect(form.disputed()).toBe("Fork rebound");
      expect(form.save()).toBe(true);
    });
    expect(serviceDone()?.settings).not.toHaveProperty([REBOUND]);
    expect(serviceDone()?.settings).toHaveProperty([MAIN]);
  });

  test("asks what was done, save for a part that has one work only", () => {
    const { size } = team.ledger;
    withForm("fork", (form) => {
      expect(form.save()).toBe(false);
      expect(form.problem()).toBe("Choose what was done.");
    });
    expect(team.ledger.size).toBe(size);
    withForm("shock", (form) => expect(form.draft().what).toBe("complete"));
  });

  test("refuses what the record cannot hold, and writes nothing", () => {
    const { size } = team.ledger;
    withForm("fork", (form) => {
      form.set({ what: "complete", hoursBefore: 6000 });
      expect(form.save()).toBe(false);
      expect(form.problem()).toContain("6000 is above the allowed 5000");
    });
    expect(team.ledger.size).toBe(size);
  });

  test("is the last own act, and its undo brings the hours back", () => {
    ride(3);
    withForm("fork", (form) => {
      form.set({ what: "complete" });
      form.save();
    });
    expect(partsShown()[0]?.works.map(({ used }) => used)).toEqual(["0 h", "0 h"]);
    const last = lastOwnAction(team.ledger, actor);
    expect(last?.what).toBe("Fork, service done: complete service");
    for (const { id } of last?.records ?? []) written(team.writerFor("mia").revert(id));
    expect(partsShown()[0]?.works.map(({ used }) => used)).toEqual(["3 h", "3 h"]);
    expect(lastOwnAction(team.ledger, actor)).toBeUndefined();
  });
});

describe("the service of a bike in words", () => {
  test("tells hours, state and what is left of the interval at this weekend's rate", () => {
    ride(46);
    const [fork, shock] = partsShown();
    expect(fork).toMatchObject({ title: "Fork", state: "due" });
    expect(fork?.works.map(({ name, used, limit, stateText, left }) => [name, used, limit, stateText, left])).toEqual([
      [
        "Bath oil of the lower legs",
        "46 h",
        "of 50 h",
        "Due",
        "4 runs, less than a session like this weekend's, until the hours are over.",
      ],
      [
        "Complete service",
        "46 h",
        "of 200 h",
        "In use",
        "134 runs, or 2 sessions like this weekend's, until it is due.",
      ],
    ]);
    expect(shock?.works.map(({ name }) => name)).toEqual(["Complete service"]);
  });

  test("tells runs alone before the weekend's first run", () => {
    // 45 h until it is due, in runs of four minutes.
    expect(partsShown()[0]?.works[0]?.left).toBe("675 runs until it is due.");
  });

  test("never rounds up to hours that are not reached", () => {
    written(team.writerFor("mia").set(servicePlanKind, "team", { weights: { dry: 0.999 } }));
    ride(50);
    expect(partsShown()[0]?.works[0]).toMatchObject({ used: "49.9 h", stateText: "Due" });
  });

  test("tells who did the last service, with the settings that were on the bike", () => {
    withForm("shock", (form) => {
      form.set({ hoursBefore: 20, note: "play in the eyelet" });
      form.save();
    });
    const last = partsShown()[1]?.works[0]?.last;
    expect(last?.sentence).toMatch(/^Last: Complete service, Mia, /);
    expect(last).toMatchObject({ hoursBefore: "20 h were on it then.", note: "play in the eyelet" });
    expect(last?.settings).toHaveLength(Object.keys(setupValues).length);
  });

  test("says how the hours are counted, with the team's own numbers", () => {
    written(team.writerFor("mia").set(servicePlanKind, "team", { minutesPerRun: 5, dueFrom: 0.8 }));
    createRoot((dispose) => {
      expect(createService(bench()).counting()).toEqual([
        "Each run counts with its time for the parts that were on its bike then, also on another bike; a run without a time counts as 5 minutes.",
        "An hour counts by the ground: dry dust 1.5 h, dry 1 h, damp 1.2 h, wet 1.5 h, mud 2 h. A ground that is not entered counts as dry.",
        "What is left is counted in runs like this weekend's; before the first one, in runs of 5 minutes on dry ground.",
        "Due from 80 % of the hours on.",
        "Common practice, where the maker says nothing else.",
      ]);
      dispose();
    });
  });
});

describe("the queue", () => {
  test("leads a service that two people have entered differently to the rider's bench", () => {
    const service = { bike: "alder-1", place: "fork", settings: {} };
    for (const [n, what] of ["bath oil", "complete"].entries()) {
      const id = `0200000000000000000000000${n + 1}`;
      const envelope = { version: 1, id, supersedes: [], by: "mia", device: "a", at: "2026-05-29T09:00:00Z" };
      team.ledger.add({ ...envelope, subject: "service:alder/s", value: { ...service, what } }, "rider/alder/2026");
    }
    expect(disputeLines(team.ledger)).toMatchObject([{ rider: "Alder", path: "/pit/rider/alder" }]);
  });
});
