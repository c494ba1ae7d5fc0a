import { createRoot, createSignal } from "solid-js";
import { render } from "solid-js/web";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { changeLines } from "#client/pit/change-lines.ts";
import { createActs } from "#client/pit/create-acts.ts";
import { createChangeFilter } from "#client/pit/create-change-filter.ts";
import { MomentsSection } from "#client/pit/moments/moments-section.tsx";
import { benchOccasion } from "#client/pit/occasion.ts";
import { changelogView } from "#client/review/changelog-view.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { riderBike } from "#core/team/roster.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { programme } from "#core/weekend/programme.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { setupValues } from "#tests/builders/bike.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { MAIN, REBOUND } from "./pit-team.ts";

let team: TeamLedger;
let close: (() => void) | undefined;

beforeEach(() => {
  team = teamLedger();
  put(setupValues, "otter");
  put({ [MAIN]: { value: 64, unit: "psi" }, [REBOUND]: { value: 7, unit: "clicks" } });
});

afterEach(() => {
  close?.();
  document.body.replaceChildren();
});

function put(values: SetupValues, weekend = "kestrel"): void {
  const entries = Object.entries(values).map(([path, quantity]) => ({
    kind: settingKind,
    key: `alder/alder-1/${path}`,
    value: { quantity, standing: "on the bike", weekend },
  }));
  written(team.writerFor("mia").setMany(entries as never));
}

const mounted = () => riderBike(team.ledger, "alder");
const onTheBike = () => valuesOnBike(settingsOnBike(team.ledger, mounted() as never));

function open() {
  const mia = team.writerFor("mia");
  const [revision, setRevision] = createSignal(0);
  const ledger = () => {
    revision();
    return team.ledger;
  };
  const device = {
    ledger,
    write: (...given: Parameters<Device["write"]>) => {
      const result = mia.setMany(...given);
      setRevision(team.ledger.revision);
      return result;
    },
  } as Device;
  const plan = () => programme(ledger(), "kestrel");
  const bike = () => riderBike(ledger(), "alder");
  const settings = () => settingsOnBike(ledger(), bike() as never);
  const bench = {
    device,
    mounted: bike,
    settings,
    chosen: { programme: plan } as never,
    occasion: () => benchOccasion(bike() as never, settings(), plan() as never, "p1"),
    acts: createActs(device),
  };
  close = render(() => <MomentsSection bench={bench} />, document.body);
  expect(document.querySelector("select")).toBeNull();
  const details = document.querySelector("details") as HTMLDetailsElement;
  details.open = true;
  // A browser says so by itself; jsdom does not.
  details.dispatchEvent(new Event("toggle"));
  return bench;
}

const rows = () =>
  [...document.querySelectorAll("tbody tr")].map((row) => [...row.children].map(({ textContent }) => textContent));

function choose(select: number, index: number): void {
  const element = document.querySelectorAll("select")[select] as HTMLSelectElement;
  element.selectedIndex = index < 0 ? element.options.length + index : index;
  element.dispatchEvent(new Event("change", { bubbles: true }));
}

describe("comparing two moments", () => {
  test("opens on the time before the weekend against now, and names every adjuster that differs", () => {
    enterCourse(team.writerFor("mia"));
    open();
    expect(document.body.textContent).toContain("2 adjusters differ.");
    expect(rows()).toEqual([
      ["Fork main pressure", "60 psi", "64 psi", "4 psi more"],
      ["Fork rebound", "8 clicks", "7 clicks", "1 click less"],
    ]);
  });

  test("compares any two moments", () => {
    put({ [REBOUND]: { value: 5, unit: "clicks" } });
    open();
    choose(0, 2);
    expect(rows()).toEqual([["Fork rebound", "7 clicks", "5 clicks", "2 clicks less"]]);
    choose(1, 2);
    expect(document.body.textContent).toContain("Nothing differs between the two.");
  });

  test("shows the way back with its order and cautions, and writes it as one batch", () => {
    enterCourse(team.writerFor("mia"));
    const bench = open();
    expect(document.body.textContent).toContain("Before you touch the bike");
    expect(document.body.textContent).toContain("keeps every limit after every step");
    const button = [...document.querySelectorAll("button")].find(({ className }) => className === "main");
    button?.click();
    expect(bench.acts.notice()).toContain("Back to that moment");
    expect(onTheBike()).toEqual(setupValues);
    const [first, second] = changeLines(team.ledger, "alder");
    expect(first?.why).toContain("Back to: Before the weekend Kestrel.");
    expect(new Set([first?.id, second?.id].map((id) => team.ledger.record(id ?? "")?.batch)).size).toBe(1);
    expect(document.body.textContent).toContain("Nothing differs between the two.");
  });

  test("says what is missing for the way back while the conditions are not entered", () => {
    open();
    expect(document.body.textContent).toContain("enter course and conditions first");
    expect(document.querySelector("button")).toBeNull();
    expect(rows()).toHaveLength(2);
  });
});

describe("the filters of a changelog", () => {
  test("in the pit leave the lines of one adjuster, of one weekend, or of both", () => {
    createRoot((dispose) => {
      const filter = createChangeFilter(() => changeLines(team.ledger, "alder"));
      expect(filter.lines()).toHaveLength(Object.keys(setupValues).length + 2);
      expect(filter.weekends()).toEqual(["kestrel", "otter"]);
      filter.choosePath(MAIN);
      expect(filter.lines().map(({ to }) => to)).toEqual(["64 psi", "60 psi"]);
      filter.chooseWeekend("otter");
      expect(filter.lines().map(({ to }) => to)).toEqual(["60 psi"]);
      filter.choosePath(undefined);
      filter.chooseWeekend(undefined);
      expect(filter.lines()).toHaveLength(Object.keys(setupValues).length + 2);
      dispose();
    });
  });

  test("in the review leave the lines of one adjuster", () => {
    expect(changelogView(team.ledger, "kestrel", undefined, REBOUND).map(({ after }) => after)).toEqual(["7 clicks"]);
    expect(changelogView(team.ledger, "kestrel", undefined)).toHaveLength(2);
  });
});
