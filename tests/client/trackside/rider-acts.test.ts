import { afterEach, beforeEach, describe, expect, it } from "vitest";
import type { SmallStorage } from "#client/device/storage/browser-storage.ts";
import { showUnits } from "#client/text/shown-units.ts";
import { bikeView } from "#client/trackside/bike-view.ts";
import { createRunLog } from "#client/trackside/create-run-log.ts";
import { defaultSession } from "#client/trackside/default-session.ts";
import { describeRun } from "#client/trackside/describe-run.ts";
import { writeOwnChange } from "#client/trackside/own-change.ts";
import { questionsOfEnd } from "#client/trackside/questions-of-end.ts";
import { withFeedback } from "#client/trackside/run-draft.ts";
import { sectionChoice } from "#client/trackside/section-options.ts";
import { formatMoment } from "#client/widgets/format.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { mountedAdjuster, type RiderBike, riderBike } from "#core/team/roster.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { programme } from "#core/weekend/programme.ts";
import { courseKind, settingKind } from "#core/weekend/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

let team: TeamLedger;
let mounted: RiderBike;
let storage: SmallStorage & { readonly entries: Map<string, string> };
let device: Parameters<typeof writeOwnChange>[0];

beforeEach(() => {
  team = teamLedger();
  const mia = team.writerFor("mia");
  enterCourse(mia);
  for (const [path, value] of [
    ["fork.main-pressure", 60],
    ["fork.secondary-pressure", 110],
  ] as const) {
    const setting = { quantity: { value, unit: "psi" }, standing: "on the bike" } as const;
    written(mia.set(settingKind, settingKey("alder", "alder-1", path), setting));
  }
  const found = riderBike(team.ledger, "alder");
  if (!found) throw new Error("The builder's team has no rider alder.");
  mounted = found;
  const entries = new Map<string, string>();
  storage = {
    entries,
    getItem: (key) => entries.get(key) ?? null,
    setItem: (key, value) => void entries.set(key, value),
    removeItem: (key) => void entries.delete(key),
  };
  const alder = team.writerFor("alder");
  device = { ledger: () => team.ledger, write: (entriesToWrite, options) => alder.setMany(entriesToWrite, options) };
});

describe("logging a run", () => {
  it("writes it with the records of what is on the bike, and gives the draft up", () => {
    const log = newLog();
    log.change(withFeedback(log.draft(), "front", { middle: "dives" }));
    expect(log.save(mounted, "kestrel", "p1").ok).toBe(true);
    const [logged] = loggedRuns(team.ledger, "kestrel", "alder");
    const heads = (["fork.main-pressure", "fork.secondary-pressure"] as const).flatMap((path) =>
      team.ledger.heads(settingKind, settingKey("alder", "alder-1", path)).map(({ id }) => id),
    );
    expect(logged).toMatchObject({ id: "run-1", by: "alder", run: { session: "p1", front: { middle: "dives" } } });
    expect(logged?.run.setup).toEqual(heads);
    expect(log.draft().front).toEqual({});
    expect(storage.entries.size).toBe(0);
  });

  it("keeps the draft for the next visit of the page", () => {
    const log = newLog();
    log.change(withFeedback(log.draft(), "rear", { bottomOuts: 3 }));
    log.changeConfidence("high");
    log.changeConfidence(undefined);
    expect(newLog().draft()).toEqual(log.draft());
    expect(newLog().draft().rear).toEqual({ bottomOuts: 3 });
  });

  it("loses nothing when it is refused", () => {
    const log = newLog();
    log.change({ ...log.draft(), time: "soon", note: "Good" });
    expect(log.save(mounted, "kestrel", "p1").ok).toBe(false);
    expect(loggedRuns(team.ledger, "kestrel")).toEqual([]);
    expect(newLog().draft()).toMatchObject({ time: "soon", note: "Good" });
  });

  describe("tied to a section of the course", () => {
    const rocks = { id: "rocks", name: "Rock garden", from: 300, to: 420 };
    const name = (...sections: readonly object[]) => {
      const course = { mix: { steep: 1, jumpy: 0, wet: 0 }, altitude: { value: 300, unit: "m" }, sections };
      written(team.writerFor("mia").set(courseKind, "kestrel", course as never));
    };
    const options = (chosen?: typeof rocks) => sectionChoice(team.ledger, "kestrel", chosen);

    it("offers nothing while no section is named, and the whole run first when there is one", () => {
      expect(options()).toBeUndefined();
      name(rocks);
      const choice = options();
      expect(choice?.options.map(choice.labelOf)).toEqual(["the whole run", "Rock garden"]);
      expect(choice?.sectionOf(choice.chosen)).toBeUndefined();
      expect(choice?.sectionOf("rocks")).toEqual(rocks);
    });

    it("keeps the section as it is named when the run is saved, and says it in words", () => {
      name(rocks);
      const log = newLog();
      log.change(withFeedback(log.draft(), "front", { end: "hits hard" }));
      log.changeSection(rocks);
      name({ ...rocks, to: 460 });
      expect(newLog().draft().section).toEqual(rocks);
      expect(log.save(mounted, "kestrel", "p1").ok).toBe(true);
      const [logged] = loggedRuns(team.ledger, "kestrel", "alder");
      expect(logged?.run.section).toEqual({ ...rocks, to: 460 });
      expect(logged && describeRun(logged.run)[0]).toBe("Where: Rock garden, 300 to 460 m");
    });

    it("is for the whole run when the section is taken back, and says so when it is named no more", () => {
      name(rocks);
      const log = newLog();
      log.change(withFeedback(log.draft(), "front", { end: "hits hard" }));
      log.changeSection(rocks);
      name();
      expect(log.save(mounted, "kestrel", "p1")).toEqual({
        ok: false,
        sentence: expect.stringContaining("The section Rock garden is no longer named"),
      });
      expect(options(rocks)?.chosen).toBeUndefined();
      log.changeSection(undefined);
      expect(log.save(mounted, "kestrel", "p1").ok).toBe(true);
      expect(loggedRuns(team.ledger, "kestrel", "alder")[0]?.run).not.toHaveProperty("section");
    });

    it("alone says nothing: a section without a word about it is not saved", () => {
      name(rocks);
      const log = newLog();
      log.changeSection(rocks);
      expect(log.save(mounted, "kestrel", "p1").ok).toBe(false);
    });
  });

  it("is not saved by a touch of the button alone: nothing was said, measured or timed", () => {
    const before = team.ledger.size;
    const saved = newLog().save(mounted, "kestrel", "race");
    expect(saved.ok ? "" : saved.sentence).toContain("Nothing was said about the run yet");
    expect(team.ledger.size).toBe(before);
  });

  it("makes the session of the latest run the one to go on with", () => {
    expect(defaultSession(team.ledger, plan(), "alder")?.id).toBe("p1");
    const log = newLog();
    log.changeConfidence("fair");
    expect(log.save(mounted, "kestrel", "race").ok).toBe(true);
    expect(defaultSession(team.ledger, plan(), "alder")?.id).toBe("race");
    expect(defaultSession(team.ledger, plan(), undefined)?.id).toBe("p1");
  });
});

describe("a change of the rider's own", () => {
  it("shows as reported, with the value that was said", () => {
    expect(change("fork.main-pressure", 58).ok).toBe(true);
    const shown = view("fork.main-pressure");
    expect(shown).toMatchObject({ value: "58 psi", number: 58, claims: [] });
    expect(shown?.standing).toContain("confirm");
  });

  it("is refused by the limit that it breaks, and nothing is written", () => {
    const before = team.ledger.size;
    const refused = change("fork.main-pressure", 108);
    expect(refused.ok).toBe(false);
    expect(refused.sentence).toContain("secondary chamber");
    expect(team.ledger.size).toBe(before);
  });

  it("says so when the value is known already, and leaves it confirmed", () => {
    expect(change("fork.main-pressure", 60).sentence).toContain("already");
    expect(view("fork.main-pressure")).toMatchObject({ value: "60 psi", standing: undefined });
  });
});

describe("an own change of one who reads bar", () => {
  afterEach(() => showUnits({}));

  it("is none as long as the field shows what is known", () => {
    showUnits({ pressure: "bar" });
    const shown = view("fork.main-pressure")?.number;
    expect(shown).toBe(4.14);
    const before = team.ledger.size;
    expect(change("fork.main-pressure", shown ?? 0).sentence).toContain("already");
    expect(team.ledger.size).toBe(before);
    expect(view("fork.main-pressure")?.standing).toBeUndefined();
  });

  it("is kept as it was typed", () => {
    showUnits({ pressure: "bar" });
    expect(change("fork.main-pressure", 4.2).ok).toBe(true);
    showUnits({});
    expect(view("fork.main-pressure")?.value).toBe("4.2 bar");
  });
});

describe("the bike as the rider sees it", () => {
  it("has no value where nothing is known", () => {
    expect(view("fork.rebound")).toMatchObject({ value: undefined, number: undefined, standing: undefined });
  });

  it("shows what each of two people says", () => {
    const key = settingKey("alder", "alder-1", "fork.main-pressure");
    const [head] = team.ledger.heads(settingKind, key);
    for (const [id, by, value] of [
      ["01ARZ3NDEKTSV4RRFFQ69G5FA1", "mia", 61],
      ["01ARZ3NDEKTSV4RRFFQ69G5FA2", "somebody", 63],
    ] as const) {
      const setting = { quantity: { value, unit: "psi" }, standing: "on the bike" };
      const envelope = {
        version: 1,
        id,
        supersedes: head ? [head.id] : [],
        by,
        device: by,
        at: "2026-05-29T12:00:00Z",
      };
      team.ledger.add({ ...envelope, subject: `setting:${key}`, value: setting }, "rider/alder/2026");
    }
    expect(view("fork.main-pressure")?.now).toBe("in dispute");
    expect(view("fork.main-pressure")?.claims).toEqual(
      ["61 psi, says Mia", "63 psi, says somebody"].map((said) => `${said}, ${formatMoment("2026-05-29T12:00:00Z")}`),
    );
  });
});

describe("what is asked of an end", () => {
  it("is only the grip where there is no suspension", () => {
    const { shock: _none, ...parts } = mounted.parts;
    expect(questionsOfEnd({ ...mounted, parts }, "rear")).toEqual({
      feelings: ["grip"],
      noticed: ["steps out", "tyre squirms", "rim strikes", "knocks"],
      measured: undefined,
    });
    expect(questionsOfEnd(mounted, "rear").measured).toEqual({ stroke: 70, usualSag: 21 });
  });
});

function newLog() {
  return createRunLog({ device, riderId: "alder", storage, newRunId: () => "run-1" });
}

function plan() {
  const found = programme(team.ledger, "kestrel");
  if (!found) throw new Error("The builder's team has no weekend.");
  return found;
}

function change(path: AdjusterPath, value: number) {
  const found = mountedAdjuster(mounted.parts, path);
  if (!found) throw new Error(`The builder's bike has no ${path}.`);
  return writeOwnChange(device, {
    mounted,
    weekendId: "kestrel",
    sessionId: "p1",
    surroundings: undefined,
    found,
    value,
  });
}

function view(path: AdjusterPath) {
  return bikeView(team.ledger, mounted)
    .flatMap(({ adjusters }) => adjusters)
    .find((adjuster) => adjuster.path === path);
}
