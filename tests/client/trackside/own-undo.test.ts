import { createRoot } from "solid-js";
import { afterEach, beforeEach, describe, expect, it } from "vitest";
import { lastTeamAct } from "#client/pit/last-team-act.ts";
import { createOwnUndo, type OwnUndo } from "#client/trackside/own-undo.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { conditionsKind, courseKind, decisionKind, runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { loggedRuns } from "#core/weekend/runs.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const rebound = settingKey("alder", "alder-1", "fork.rebound");
const clicks = (value: number) => ({ quantity: { value, unit: "clicks" as const }, weekend: "kestrel" });
const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: { middle: "dives" }, rear: {} } as const;

let team: TeamLedger;
let dispose = (): void => {};

beforeEach(() => {
  team = teamLedger();
  // The builder's writers are on a device of the member's name.
  localStorage.setItem("pitslate.device", "alder");
});
afterEach(() => dispose());

function undoOfAlder(): OwnUndo {
  const alder = team.writerFor("alder");
  const device = {
    ledger: () => team.ledger,
    memberId: () => "alder",
    revert: (id: string) => alder.revert(id),
  };
  return createRoot((end) => {
    dispose = end;
    return createOwnUndo(device, () => "alder");
  });
}

describe("the rider's undo", () => {
  it("takes the run back that was saved last", () => {
    written(team.writerFor("alder").set(runKind, "alder/r1", run));
    const undo = undoOfAlder();
    expect(undo.what()).toBe("your run in p1");
    undo.undo();
    expect(loggedRuns(team.ledger, "kestrel", "alder")).toEqual([]);
    expect(undo.said()).toBe("Undone: your run in p1");
  });

  it("takes his own change back to the value before", () => {
    written(team.writerFor("mia").set(settingKind, rebound, { ...clicks(9), standing: "on the bike" }));
    written(team.writerFor("alder").set(settingKind, rebound, { ...clicks(7), standing: "reported" }));
    const undo = undoOfAlder();
    expect(undo.what()).toBe("Fork, rebound 7 clicks");
    undo.undo();
    expect(team.ledger.current(settingKind, rebound)).toMatchObject({ value: { quantity: { value: 9 } } });
  });

  it("is not offered for a run that a mechanic has answered, nor for what others did", () => {
    written(team.writerFor("alder").set(runKind, "alder/r1", run));
    written(team.writerFor("mia").set(decisionKind, "alder/r1", { outcome: "left as it is" }));
    expect(undoOfAlder().what()).toBeUndefined();
    dispose();
    written(team.writerFor("mia").set(settingKind, rebound, { ...clicks(7), standing: "reported" }));
    expect(undoOfAlder().what()).toBeUndefined();
  });
});

describe("the undo of what concerns the team", () => {
  it("takes course and conditions back that were entered last, and nothing that somebody has changed since", () => {
    const mia = team.writerFor("mia");
    enterCourse(mia);
    const member = { memberId: "mia", deviceId: "mia" };
    const act = lastTeamAct(team.ledger, member);
    expect(act?.what).toBe("course and conditions");
    const before = team.ledger.current(courseKind, "kestrel");
    expect(before.state).toBe("settled");
    const conditions = team.ledger.keys(conditionsKind)[0] ?? "";
    const now = team.ledger.current(conditionsKind, conditions);
    if (now.state !== "settled") throw new Error("The builder's conditions are not settled.");
    written(team.writerFor("nils").set(conditionsKind, conditions, { ...now.value, ground: "mud" }));
    for (const id of lastTeamAct(team.ledger, member)?.ids ?? []) written(mia.revert(id));
    expect(team.ledger.current(conditionsKind, conditions)).toMatchObject({ value: { ground: "mud" } });
  });
});
