import { MemoryRouter, Route } from "@solidjs/router";
import { createRoot, createSignal } from "solid-js";
import { render } from "solid-js/web";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { countdownLines } from "#client/pit/jobs/countdown-lines.ts";
import { createJobQueue } from "#client/pit/jobs/create-job-queue.ts";
import { JobList } from "#client/pit/jobs/job-list.tsx";
import { rememberJobs } from "#client/pit/jobs/remember-jobs.ts";
import { riderStamp } from "#client/pit/jobs/rider-stamp.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import type { Writer } from "#core/ledger/write.ts";
import { jobQueue } from "#core/planning/job-queue.ts";
import { serviceKind, servicePlanKind } from "#core/planning/service-kinds.ts";
import { baselineKind, bikeKind, riderKind } from "#core/team/record-kinds.ts";
import { riderBike } from "#core/team/roster.ts";
import { programme } from "#core/weekend/programme.ts";
import { conditionsKind, decisionKind, noRunKind, runKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { baseline } from "#tests/builders/bike.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { arriveFromElsewhere, keyOf, MAIN, REBOUND } from "./pit-team.ts";

const EARLY = Date.parse("2026-05-29T08:35Z");

let team: TeamLedger;
let mia: Writer;
let close: (() => void) | undefined;
/** Of the touches: far enough apart that each is meant. */
let moment = 10_000;

beforeEach(() => {
  team = teamLedger();
  mia = team.writerFor("mia");
  enterCourse(mia);
});

afterEach(() => {
  close?.();
  close = undefined;
  document.body.replaceChildren();
});

/** A second rider, on a bike of his own with the parts of the first. */
function addBirch(): void {
  const { rider, bike } = riderBike(team.ledger, "alder") ?? {};
  written(mia.set(riderKind, "birch", { ...rider, name: "Birch", bike: "birch-1" } as never));
  written(mia.set(bikeKind, "birch-1", { ...bike, rider: "birch" } as never));
  written(mia.set(baselineKind, "birch/steep", baseline({}, { bike: "birch-1" })));
}

function device() {
  const [revision, setRevision] = createSignal(0);
  team.ledger.onChange(() => setRevision(team.ledger.revision));
  return {
    ledger: () => {
      revision();
      return team.ledger;
    },
    write: (entries, options) => mia.setMany(entries, options),
    revert: (id) => mia.revert(id),
    resolve: (kind, key, value, options) => mia.resolve(kind, key, value, options),
  } satisfies Pick<Device, "ledger" | "write" | "revert" | "resolve"> as Device;
}

function open(sessionId = "p1", at = EARLY): void {
  const plan = () => programme(team.ledger, "kestrel");
  const session = () => plan()?.sessions.find(({ id }) => id === sessionId);
  const Queue = () => {
    const queue = createJobQueue({
      device: device(),
      isRead: () => true,
      chosen: { programme: plan, session },
      now: () => at,
      later: (turn) => turn(),
    });
    const context = { device: device(), programme: plan(), sessionId };
    return <JobList queue={queue} context={context} query="?weekend=kestrel&session=p1" nothing="Nothing" />;
  };
  close = render(
    () => (
      <MemoryRouter>
        <Route path="/" component={Queue} />
      </MemoryRouter>
    ),
    document.body,
  );
}

const rows = () => [...document.querySelectorAll("li.pit-job")];
const row = (kind: string) => document.querySelector(`li[data-job="${kind}"]`);
function button(name: string): HTMLButtonElement {
  const found = [...document.querySelectorAll("button")].find(({ textContent }) => textContent?.includes(name));
  if (!found) throw new Error(`There is no button "${name}".`);
  return found;
}
function press(control: HTMLElement, after = 1000): void {
  moment += after;
  const event = new MouseEvent("click", { bubbles: true, cancelable: true });
  Object.defineProperty(event, "timeStamp", { value: moment });
  control.dispatchEvent(event);
}

const settingAt = (path: string) => settledValue(team.ledger.current<Setting>(settingKind, `alder/alder-1/${path}`));

describe("a job in the queue", () => {
  test("says rider, what, why and until when, with its steps in their order", () => {
    open();
    const text = row("change to make")?.textContent ?? "";
    expect(text).toContain("Alder");
    expect(text).toContain("10 adjusters to set");
    expect(text).toContain("The bike is not as course, ground and temperature of p1 ask for.");
    expect(text).toContain("Until p1, Fri 29 May, 10:00");
    expect(row("change to make")?.querySelectorAll("ol > li")).toHaveLength(10);
    expect(document.body.textContent).toContain("stay below the maximum marked on the part");
  });

  test("is done in one touch, and undone in one by the same button", () => {
    open();
    const main = button("It is all on the bike");
    press(main);
    expect(settingAt(MAIN)?.quantity).toEqual({ value: 60, unit: "psi" });
    expect(row("change to make")?.textContent).toContain("Done: 10 settings on the bike");
    expect(button("Undo")).toBe(main);
    press(main);
    expect(settingAt(MAIN)).toBeUndefined();
    expect(row("change to make")?.textContent).toContain("10 adjusters to set");
    expect(button("It is all on the bike")).toBe(main);
  });

  test("is not undone by a glove that trembles", () => {
    open();
    press(button("It is all on the bike"));
    press(button("Undo"), 300);
    expect(settingAt(MAIN)).toBeDefined();
  });

  test("keeps its place once it is done", () => {
    written(
      mia.set(runKind, "alder/run-1", { bike: "alder-1", weekend: "kestrel", session: "p1", front: {}, rear: {} }),
    );
    addBirch();
    open();
    const before = rows();
    press(button("It is all on the bike"));
    expect(before.map((item) => item.getAttribute("data-job"))).toEqual([
      "feedback to decide on",
      "change to make",
      "change to make",
    ]);
    expect(rows()).toEqual(before);
  });

  test("has no undo once somebody has changed since what was done", () => {
    open();
    press(button("It is all on the bike"));
    const value: Setting = { quantity: { value: 3, unit: "clicks" }, standing: "on the bike", weekend: "kestrel" };
    written(team.writerFor("nils").set(settingKind, keyOf(REBOUND), value, { cause: { type: "by hand" } }));
    const done = row("change to make");
    expect(done?.querySelectorAll("button")).toHaveLength(0);
    expect(done?.textContent).toContain("Changed since");
    expect(done?.querySelector("a")?.getAttribute("href")).toBe("/pit/rider/alder?weekend=kestrel&session=p1");
  });
});

describe("taking back what was done", () => {
  test("never settles a dispute that has come up since: both claims stay in view", () => {
    open();
    press(button("It is all on the bike"));
    arriveFromElsewhere(team, REBOUND, { value: 6, unit: "clicks" }, []);
    expect(row("dispute to check")).not.toBeNull();
    expect(row("change to make")?.querySelectorAll("button")).toHaveLength(0);
    expect(row("change to make")?.textContent).toContain("Changed since");
    expect(team.ledger.current(settingKind, keyOf(REBOUND)).state).toBe("disputed");
  });

  test("goes on to what was done before on the same adjuster, one undo after the other", () => {
    open();
    press(button("It is all on the bike"));
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: { returnSpeed: "too slow" }, rear: {} };
    written(mia.set(runKind, "alder/run-1", run as never));
    press(button("On the bike: 9 clicks"));
    expect(row("change to make")?.textContent).toContain("Changed since");
    press(button("Undo"));
    expect(settingAt(REBOUND)?.quantity.value).toBe(8);
    expect(row("change to make")?.textContent).not.toContain("Changed since");
    press(button("Undo"));
    expect(settingAt(REBOUND)).toBeUndefined();
    expect(row("change to make")?.textContent).toContain("10 adjusters to set");
  });
});

describe("an answer to a run", () => {
  test("is not a matter of one touch while nobody knows what is on the bike", () => {
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: { returnSpeed: "too slow" }, rear: {} };
    written(mia.set(runKind, "alder/run-1", run as never));
    open();
    const decide = row("feedback to decide on");
    expect(decide?.querySelectorAll("button")).toHaveLength(0);
    expect(decide?.textContent).toContain("Something is to be looked at or asked first.");
  });
});

describe("one touch", () => {
  beforeEach(() => {
    open();
    press(button("It is all on the bike"));
    close?.();
    document.body.replaceChildren();
  });

  test("confirms what the rider reported", () => {
    const reported: Setting = { quantity: { value: 4, unit: "clicks" }, standing: "reported", weekend: "kestrel" };
    written(team.writerFor("alder").set(settingKind, keyOf(REBOUND), reported));
    open();
    press(button("Seen: 4 clicks"));
    expect(settingAt(REBOUND)?.standing).toBe("on the bike");
    press(button("Undo"));
    expect(settingAt(REBOUND)?.standing).toBe("reported");
  });

  test("says which claim is right, and then offers the other one, since there is no one state to go back to", () => {
    arriveFromElsewhere(team, REBOUND, { value: 6, unit: "clicks" }, []);
    open();
    expect(row("dispute to check")?.textContent).toContain("Look at the bike before you say which one is right.");
    press(button("It is 6 clicks"));
    expect(settingAt(REBOUND)?.quantity.value).toBe(6);
    press(button("After all it is 8 clicks"));
    expect(settingAt(REBOUND)?.quantity.value).toBe(8);
    press(button("Undo"));
    expect(settingAt(REBOUND)?.quantity.value).toBe(6);
    expect(button("After all it is 8 clicks")).toBeDefined();
  });

  test("takes the first adjustment for a run or leaves the bike as it is; its undo brings the question back", () => {
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: { returnSpeed: "too slow" }, rear: {} };
    written(mia.set(runKind, "alder/run-1", run as never));
    open();
    expect(row("feedback to decide on")?.textContent).toContain("Fork rebound: 8 clicks → 9 clicks");
    press(button("On the bike: 9 clicks"));
    expect(settledValue(team.ledger.current(decisionKind, "alder/run-1"))).toEqual({ outcome: "adjusted" });
    expect(settingAt(REBOUND)?.quantity.value).toBe(9);
    press(button("Undo"));
    expect(settingAt(REBOUND)?.quantity.value).toBe(8);
    press(button("Leave as it is"));
    expect(settledValue(team.ledger.current(decisionKind, "alder/run-1"))).toEqual({ outcome: "left as it is" });
  });

  test("is not offered where the advice says to look first", () => {
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: { noticed: ["knocks"] }, rear: {} };
    written(mia.set(runKind, "alder/run-1", run as never));
    open();
    const decide = row("feedback to decide on");
    expect(decide?.querySelectorAll("button")).toHaveLength(0);
    expect(decide?.querySelector("a")?.getAttribute("href")).toBe(
      "/pit/rider/alder?view=feedback&weekend=kestrel&session=p1",
    );
  });

  test("sets pressures for the new temperature; one that somebody chose stays chosen", () => {
    const chosen: Setting = { ...(settingAt(MAIN) as Setting), quantity: { value: 66, unit: "psi" } };
    written(mia.set(settingKind, keyOf(MAIN), chosen, { cause: { type: "by hand" } }));
    written(mia.set(conditionsKind, "kestrel/race", { air: { value: 32, unit: "°C" }, ground: "dry" }));
    open("race");
    press(button("They read so now"));
    const current = team.ledger.heads(settingKind, keyOf(MAIN))[0];
    expect(current?.value?.quantity).toEqual({ value: 66, unit: "psi" });
    expect(current?.value?.heldAt?.temperature).toEqual({ value: 32, unit: "°C" });
    expect(current?.cause).toEqual({ type: "by hand", note: "The same pressure at the temperature of race." });
    const tyre = team.ledger.heads(settingKind, keyOf("front-tyre.tyre-pressure"))[0];
    expect(tyre?.cause).toEqual({ type: "conditions", session: "race" });
    press(button("Undo"));
    expect(settingAt(MAIN)?.heldAt?.temperature).toEqual({ value: 20, unit: "°C" });
  });

  test("says that there is no run to wait for", () => {
    open("race", Date.parse("2026-05-29T12:30Z"));
    expect(row("feedback missing")?.textContent).toContain("No run of p1");
    press(button("Did not ride"));
    expect(settledValue(team.ledger.current(noRunKind, "alder/kestrel/p1"))).toEqual({ reason: "did not ride" });
    expect(row("feedback missing")?.textContent).toContain("Done: Did not ride");
    press(button("Undo"));
    expect(team.ledger.current(noRunKind, "alder/kestrel/p1").state).toBe("absent");
    expect(row("feedback missing")?.textContent).toContain("No run of p1");
  });

  test("writes down a service", () => {
    written(mia.set(servicePlanKind, "team", { bathOilHours: 1, completeHours: 100 }));
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", timeSeconds: 3600, front: {}, rear: {} };
    for (const id of ["run-1", "run-2"]) {
      written(mia.setMany([{ kind: runKind, key: `alder/${id}`, value: run }]));
      written(mia.set(decisionKind, `alder/${id}`, { outcome: "left as it is" }));
    }
    open();
    press(button("Service done"));
    expect(row("service overdue")?.textContent).toContain("Done: Fork, bath oil of the lower legs");
    press(button("Undo"));
    expect(row("service overdue")?.textContent).toContain("Service done");
  });
});

describe("the jobs that are remembered", () => {
  test("are worked out anew for the rider of a new record alone, and for all when the team's records change", () => {
    addBirch();
    createRoot((dispose) => {
      const remembered = rememberJobs(team.ledger, (riderId) => riderStamp(team.ledger, riderId));
      const jobsOf = (riderId: string, now = EARLY) =>
        jobQueue(team.ledger, { weekendId: "kestrel", sessionId: "p1", now }, remembered()).filter(
          (job) => job.riderId === riderId,
        );
      const [alder, birch] = [jobsOf("alder"), jobsOf("birch")];
      expect(jobsOf("alder", EARLY + 60_000)[0]).toBe(alder[0]);
      const value: Setting = { quantity: { value: 3, unit: "clicks" }, standing: "on the bike", weekend: "kestrel" };
      written(mia.set(settingKind, keyOf(REBOUND), value, { cause: { type: "by hand" } }));
      expect(jobsOf("birch")[0]).toBe(birch[0]);
      expect(jobsOf("alder")[0]).not.toBe(alder[0]);
      written(mia.set(conditionsKind, "kestrel/p1", { air: { value: 25, unit: "°C" }, ground: "wet" }));
      expect(jobsOf("birch")[0]).not.toBe(birch[0]);
      // The part may be on the other rider's bike by now.
      const before = jobsOf("birch")[0];
      written(
        mia.set(serviceKind, "alder/service-1", {
          bike: "alder-1",
          place: "fork",
          what: "complete",
          settings: {},
        } as never),
      );
      expect(jobsOf("birch")[0]).not.toBe(before);
      dispose();
    });
  });
});

describe("the countdown", () => {
  test("says how long it is to each session of the day, which runs and which is over", () => {
    const sessions = programme(team.ledger, "kestrel")?.sessions ?? [];
    const states = (now: string) =>
      countdownLines(sessions, Date.parse(now)).map(({ name, state }) => `${name} ${state}`);
    expect(states("2026-05-29T08:35Z")).toEqual(["p1 starts in 1 hr 25 mins"]);
    expect(states("2026-05-29T10:00Z")).toEqual(["p1 running"]);
    expect(states("2026-05-29T12:00Z")).toEqual(["p1 over"]);
    expect(states("2026-05-28T09:00Z")).toEqual(["p1 starts in 1 day 1 hr"]);
    expect(states("2026-05-31T09:00Z")).toEqual([]);
  });
});
