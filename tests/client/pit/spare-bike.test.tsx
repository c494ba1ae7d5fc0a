/** A rider's bikes on the pit's screen: what is shown of a copy and a move, and what an undo takes back. */
import { createRoot, createSignal } from "solid-js";
import { render } from "solid-js/web";
import { afterEach, beforeEach, describe, expect, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { BikeCards } from "#client/pit/bikes/bike-cards.tsx";
import { createBikes } from "#client/pit/bikes/create-bikes.ts";
import { createCopy } from "#client/pit/bikes/create-copy.ts";
import { createMove } from "#client/pit/bikes/create-move.ts";
import { ASIDE } from "#client/pit/bikes/move-draft.ts";
import { changeLines } from "#client/pit/change-lines.ts";
import { createActs } from "#client/pit/create-acts.ts";
import { createService } from "#client/pit/create-service.ts";
import { disputeLines } from "#client/pit/dispute-lines.ts";
import { lastOwnAction } from "#client/pit/last-own-action.ts";
import { benchOccasion } from "#client/pit/occasion.ts";
import { movePart } from "#core/planning/move-part.ts";
import { bikeKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { riderBike } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { programme } from "#core/weekend/programme.ts";
import { runKind } from "#core/weekend/record-kinds.ts";
import { twoChamberFork } from "#tests/builders/bike.ts";
import { enterCourse, type TeamLedger, written } from "#tests/builders/team-ledger.ts";
import { apart, OTHER, putOn, RACE, SPARE, settingOn, teamWithSpare } from "#tests/builders/two-bikes.ts";

let team: TeamLedger;
let close: (() => void) | undefined;

beforeEach(() => {
  team = build();
});

afterEach(() => {
  close?.();
  close = undefined;
  document.body.replaceChildren();
});

function build(fork = twoChamberFork): TeamLedger {
  const built = teamWithSpare(fork);
  enterCourse(built.writerFor("mia"));
  putOn(built.writerFor("mia"));
  return built;
}

function bench() {
  const mia = team.writerFor("mia");
  const [revision, setRevision] = createSignal(0);
  const ledger = () => {
    revision();
    return team.ledger;
  };
  const seen = <Result,>(result: Result): Result => {
    setRevision(team.ledger.revision);
    return result;
  };
  const device = {
    ledger,
    write: (...given: Parameters<Device["write"]>) => seen(mia.setMany(...given)),
    revert: (id: string) => seen(mia.revert(id)),
  } as Device;
  const mounted = () => riderBike(ledger(), "alder");
  const plan = () => programme(ledger(), "kestrel");
  const occasion = () => {
    const bike = mounted();
    const now = plan();
    return bike && now && benchOccasion(bike, settingsOnBike(ledger(), bike), now, "p1");
  };
  return { device, mounted, occasion, acts: createActs(device), chosen: { programme: plan } };
}

function inRoot<Result>(act: (shown: ReturnType<typeof bench>) => Result): Result {
  return createRoot((dispose) => {
    const result = act(bench());
    dispose();
    return result;
  });
}

const undoable = () => lastOwnAction(team.ledger, { riderId: "alder", memberId: "mia", deviceId: "mia" });

function undo(): string | undefined {
  const action = undoable();
  for (const { id } of action?.records ?? []) written(team.writerFor("mia").revert(id));
  return action?.what;
}

describe("a setup for the spare bike", () => {
  test("is shown from the ridden bike to the rider's next one, with every difference and refusal in words", () => {
    inRoot((shown) => {
      const copy = createCopy(shown);
      expect([copy.fromId(), copy.toId()]).toEqual([RACE, OTHER]);
      copy.chooseTo(SPARE);
      expect(copy.differences()).toContain("Travel of the shock: 65 mm, not 70 mm.");
      expect(copy.differences()).toContain("Leverage ratio of the shock: 2.92, not 2.71.");
      const rate = copy.lines()?.find(({ path }) => path === "shock.spring-rate");
      expect(rate).toMatchObject({ value: "85 N/mm", now: "not known", isRefused: true });
      expect(rate?.outcome).toBe(
        "Refused. Shock spring rate: 85 N/mm is outside the part's range of 90 N/mm to 140 N/mm.",
      );
      expect(rate?.notes).toEqual(["Range 40 N/mm to 120 N/mm, there 90 N/mm to 140 N/mm."]);
    });
  });

  test("is written when it is taken, and one undo takes all of it back", () => {
    inRoot((shown) => {
      const copy = createCopy(shown);
      copy.chooseTo(SPARE);
      copy.take();
      expect(shown.acts.notice()).toBe("Copied from Alder one: 9 settings on Alder two");
    });
    expect(settingOn(team.ledger, SPARE, "fork.rebound")).toEqual({ value: 8, unit: "clicks" });
    const [line] = changeLines(team.ledger, "alder");
    expect(line).toMatchObject({ bike: "Alder two", why: "Copied from Alder one." });
    expect(undo()).toBe("copied, 9 settings");
    expect(settingOn(team.ledger, SPARE, "fork.rebound")).toBeUndefined();
    expect(settingOn(team.ledger, RACE, "fork.rebound")).toEqual({ value: 8, unit: "clicks" });
  });

  test("is not shown from a bike to itself", () => {
    inRoot((shown) => {
      const copy = createCopy(shown);
      copy.chooseTo(RACE);
      expect([copy.lines(), copy.differences(), copy.sequence()]).toEqual([undefined, [], undefined]);
    });
  });
});

describe("the bike that is ridden", () => {
  test("is said with one touch, all screens follow, and the undo goes back", () => {
    inRoot((shown) => {
      const bikes = createBikes(shown, () => "alder");
      bikes.ride(SPARE);
      expect(shown.acts.notice()).toBe("Alder rides Alder two now");
      expect(shown.mounted()?.bikeId).toBe(SPARE);
    });
    expect(undo()).toBe("rides Alder two");
    expect(riderBike(team.ledger, "alder")?.bikeId).toBe(RACE);
  });
});

describe("a part that is moved", () => {
  test("asks where it goes and what became of its air, and then takes hours and settings along", () => {
    const run = { bike: RACE, weekend: "kestrel", session: "p1", timeSeconds: 3600, front: {}, rear: {} };
    written(team.writerFor("mia").set(runKind, "alder/run-1", run));
    inRoot((shown) => {
      const move = createMove(shown, () => "alder");
      move.choosePart("fork-1");
      move.save();
      expect(shown.acts.problem()).toBe("Choose where the part goes.");
      move.chooseTo(SPARE);
      expect([move.there(), move.asksForAir()]).toEqual(["Two-chamber fork", true]);
      move.save();
      expect(shown.acts.problem()).toBe("Say whether the air stayed in the part.");
      move.chooseAir("kept");
      move.save();
      expect(shown.acts.notice()).toBe("Moved: Two-chamber fork to Alder two");
      expect(createService(shown).parts()[0]?.works[0]?.used).toBe("0 h");
      createBikes(shown, () => "alder").ride(SPARE);
      expect(createService(shown).parts()[0]?.works[0]?.used).toBe("1 h");
      move.choosePart("fork-1");
      const [now, before] = move.history();
      expect(now?.title).toMatch(/^Alder two, since /);
      expect(before?.title).toMatch(/^Alder one, until /);
      expect(before?.changes).toContainEqual(expect.stringMatching(/^Fork rebound 8 clicks, Mia, /));
    });
    const lines = changeLines(team.ledger, "alder");
    const whyOn = (bike: string) => lines.find((line) => line.bike === bike && line.path === "fork.rebound")?.why;
    expect(whyOn("Alder two")).toBe("Came with the part: Two-chamber fork.");
    expect(whyOn("Alder one")).toBe("Not known any more: Two-chamber fork was moved.");
  });

  test("is not another one when somebody has moved it to another rider's bike meanwhile", () => {
    const mia = team.writerFor("mia");
    const { rider, bike, parts } = riderBike(team.ledger, "alder") ?? {};
    const own = { fork: "fork-9", "front-tyre": "front-9", "rear-tyre": "rear-9" } as const;
    for (const [place, id] of Object.entries(own)) {
      written(mia.set(partKind, id, parts?.[place as keyof typeof own] as never));
    }
    written(mia.set(riderKind, "birch", { ...rider, name: "Birch", bike: "birch-1" } as never));
    written(mia.set(bikeKind, "birch-1", { ...bike, rider: "birch", parts: own } as never));
    inRoot((shown) => {
      const move = createMove(shown, () => "alder");
      move.choosePart("shock-1");
      move.chooseTo(SPARE);
      const away = { partId: "shock-1", from: RACE, to: "birch-1", swap: false, airKept: true };
      const elsewhere = movePart(team.ledger, away);
      expect(elsewhere).toMatchObject({ ok: true });
      if (elsewhere.ok) shown.device.write(elsewhere.entries);
      move.chooseAir("kept");
      move.save();
      expect(shown.acts.problem()).toBe("Choose where the part goes.");
      expect(riderBike(team.ledger, "alder")?.parts.fork?.name).toBe("Two-chamber fork");
    });
  });

  test("is taken back as a whole, also what it left unknown; once a setting of it was changed, it has to be moved back", () => {
    const move = () =>
      inRoot((shown) => {
        const moving = createMove(shown, () => "alder");
        moving.choosePart("fork-1");
        moving.chooseTo(ASIDE);
        moving.chooseAir("released");
        moving.save();
        expect(shown.acts.notice()).toBe("Moved: Two-chamber fork is kept aside");
      });
    move();
    expect(riderBike(team.ledger, "alder")?.parts.fork).toBeUndefined();
    expect(settingOn(team.ledger, RACE, "fork.main-pressure")).toBeUndefined();
    expect(undo()).toBe("moved Two-chamber fork");
    expect(riderBike(team.ledger, "alder")?.parts.fork?.name).toBe("Two-chamber fork");
    expect(settingOn(team.ledger, RACE, "fork.main-pressure")).toEqual({ value: 60, unit: "psi" });
    move();
    putOn(team.writerFor("nils"), RACE, { "fork.rebound": { value: 1, unit: "clicks" } });
    expect(undoable()).toBeUndefined();
  });
});

describe("M14 a part that two people moved apart", () => {
  function moveApart(): void {
    const other = build();
    const { nils, meet } = apart(team, other);
    const move = { partId: "fork-1", from: RACE, swap: false, airKept: true };
    for (const [ledger, writer, to] of [
      [team.ledger, team.writerFor("mia"), SPARE],
      [other.ledger, nils, OTHER],
    ] as const) {
      const result = movePart(ledger, { ...move, to });
      if (!result.ok) throw new Error(result.problem.type);
      written(writer.setMany(result.entries));
    }
    meet();
  }

  test("is shown at each bike where it may be, with who said so, and one who looked settles it", () => {
    moveApart();
    const sentences = () => disputeLines(team.ledger).map(({ sentence }) => sentence);
    expect(sentences()).toContain("Which fork is on Alder two: different things were said");
    expect(sentences()).toContain("Which fork is on Alder three: different things were said");
    expect(disputeLines(team.ledger).some(({ sentence }) => sentence.includes("mounting"))).toBe(false);
    const shown = bench();
    close = render(() => <BikeCards bikes={createBikes(shown, () => "alder")} />, document.body);
    expect(document.body.textContent).toContain("put there by Mia, ");
    expect(document.body.textContent).toContain("put there by nils, ");
    const card = [...document.querySelectorAll("article.alarm")].find((each) =>
      each.textContent?.includes("Which fork is on Alder two?"),
    );
    card?.querySelector("button")?.click();
    expect(shown.acts.notice()).toBe("Looked at the bike: Two-chamber fork is on Alder two");
    expect(sentences().filter((sentence) => sentence.startsWith("Which"))).toEqual([]);
    expect(document.querySelectorAll("article.alarm")).toHaveLength(0);
  });
});
