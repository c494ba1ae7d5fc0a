import { beforeEach, describe, expect, it } from "vitest";
import { changelogView } from "#client/review/changelog-view.ts";
import { createApproval } from "#client/review/create-approval.ts";
import { keyValues } from "#client/review/key-values.ts";
import { matrixView } from "#client/review/matrix-view.ts";
import { proposalView } from "#client/review/proposal-view.ts";
import { versionsView } from "#client/review/versions-view.ts";
import type { Writer } from "#core/ledger/write.ts";
import { type BaselineProposal, proposeBaseline } from "#core/planning/baseline-review.ts";
import type { Baseline, SetupValues } from "#core/team/baseline.ts";
import { baselineKind } from "#core/team/record-kinds.ts";
import { type RiderBike, riderBike } from "#core/team/roster.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { baseline, setupValues } from "#tests/builders/bike.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const ride = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;

let team: TeamLedger;
let mounted: RiderBike;
let mia: Writer;

beforeEach(() => {
  team = teamLedger();
  mia = team.writerFor("mia");
  enterCourse(mia);
  const found = riderBike(team.ledger, "alder");
  if (!found) throw new Error("The builder's team has no rider alder.");
  mounted = found;
  putOn({ ...setupValues, "fork.main-pressure": { value: 62, unit: "psi" } });
});

describe("the matrix", () => {
  it("has a cell for each course type and says where there is no baseline", () => {
    const [row] = matrixView(team.ledger, "2026-06-19");
    expect(row?.cells.map(({ type, notice, versions }) => [type, notice, versions])).toEqual([
      ["steep", undefined, "1 version"],
      ["jumpy", undefined, "1 version"],
      ["wet", "No baseline yet", undefined],
    ]);
  });

  it("says that two versions are in dispute and shows the values of neither", () => {
    approveApart(63, 65);
    const [row] = matrixView(team.ledger, "2026-06-19");
    expect(row?.cells[0]).toMatchObject({ versions: "3 versions", values: [] });
    expect(row?.cells[0]?.notice).toContain("dispute");
  });

  it("names each baseline by its springs, tyres and rebound", () => {
    expect(keyValues(setupValues).map(({ name, text }) => `${name} ${text}`)).toEqual([
      "Fork 60 / 110 psi",
      "Shock 85 N/mm",
      "Tyres 23 / 26 psi",
      "Rebound 8 / 7 clicks",
    ]);
  });

  it("keeps both units where the two values have different ones, and leaves out what there is not", () => {
    expect(keyValues({ "front-tyre.tyre-pressure": { value: 1.6, unit: "bar" } }).map(({ text }) => text)).toEqual([
      "1.6 bar / –",
    ]);
  });
});

describe("this weekend against the baseline", () => {
  it("shows what differs in words and sets apart what is the same", () => {
    const view = proposalView(proposal(), false);
    expect(view.changed.map(({ path, difference }) => [path, difference])).toEqual([
      ["fork.main-pressure", "2 psi more"],
    ]);
    expect(view.same).toHaveLength(Object.keys(setupValues).length - 1);
    expect(view.summary).toContain("1 adjuster");
  });

  it("does not take a disputed baseline for a missing one", () => {
    approveApart(63, 65);
    const view = proposalView(proposal(), true);
    expect(view.summary).toContain("dispute");
    expect(view.changed.every(({ difference }) => difference === "not known")).toBe(true);
  });
});

describe("approving", () => {
  it("makes a new version, keeps the old one readable, and can be undone", () => {
    const approval = createApproval(manager());
    approval.approve(proposal());
    expect(approval.done()).toContain("version 2");
    expect(standings()).toEqual([
      [2, "current"],
      [1, "old"],
    ]);
    approval.undo()?.();
    expect(approval.undo()).toBeUndefined();
    expect(currentMain()).toBe(60);
  });

  it("says so when nothing had to be written", () => {
    const approval = createApproval(manager());
    approval.approve(proposal());
    approval.approve(proposal());
    expect(approval.done()).toContain("already");
    expect(approval.undo()).toBeUndefined();
  });

  it("puts an old version in force again as a new one", () => {
    const approval = createApproval(manager());
    approval.approve(proposal());
    const first = versionsView(team.ledger, mounted, "steep").at(-1)?.record.value;
    approval.goBack("alder", "steep", first as Baseline, 1);
    expect(currentMain()).toBe(60);
    expect(standings()[0]).toEqual([3, "current"]);
  });

  it("settles a dispute by the version that is kept", () => {
    approveApart(63, 65);
    const kept = versionsView(team.ledger, mounted, "steep").find(({ record }) => main(record.value) === 63);
    createApproval(manager()).keep("alder", "steep", kept?.record.value as Baseline);
    expect(currentMain()).toBe(63);
  });
});

describe("versions side by side", () => {
  it("marks what differs from the version that each took the place of", () => {
    approveApart(63, 65);
    const [third, second, first] = versionsView(team.ledger, mounted, "steep");
    expect(third?.against).toContain("version 1");
    expect(changes(third)).toEqual([["fork.main-pressure", "5 psi more"]]);
    expect(changes(second)).toEqual([["fork.main-pressure", "3 psi more"]]);
    expect(changes(first)).toEqual([]);
    expect([third, second, first].map((version) => version?.standing)).toEqual(["in dispute", "in dispute", "old"]);
  });

  it("still shows a value whose adjuster is not on the bike any more", () => {
    const values: SetupValues = { ...setupValues, "shock.main-pressure": { value: 180, unit: "psi" } };
    written(mia.set(baselineKind, "alder/wet", baseline(values)));
    const [version] = versionsView(team.ledger, mounted, "wet");
    expect(version?.values.find(({ path }) => path === "shock.main-pressure")).toMatchObject({
      value: "180 psi",
      changed: "not on the bike now",
    });
  });
});

describe("the changelog of the weekend", () => {
  it("tells who, what, from where to where, why and for which run, newest first", () => {
    const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: {}, rear: {} };
    written(mia.set(runKind, "alder/run-1", run));
    const setting = { quantity: { value: 64, unit: "psi" }, standing: "on the bike", weekend: "kestrel" } as const;
    const cause = { type: "advice", rule: "fork-dives", run: "run-1" } as const;
    written(mia.set(settingKind, settingKey("alder", "alder-1", "fork.main-pressure"), setting, { cause }));
    createApproval(manager()).approve(proposal());
    const [approved, changed] = changelogView(team.ledger, "kestrel", "alder");
    expect(approved).toMatchObject({ who: "heather", what: "Baseline for steep", after: "a new version" });
    expect(changed).toMatchObject({ who: "Mia", rider: "Alder", before: "62 psi", after: "64 psi" });
    expect(changed?.why.join(" ")).toContain("For the run in p1");
  });

  it("says that a value was first set, and that one stayed as it was", () => {
    const setting = { quantity: { value: 62, unit: "psi" }, standing: "on the bike", weekend: "kestrel" } as const;
    const options = { cause: { type: "by hand", note: "Checked." }, force: true } as const;
    written(mia.set(settingKind, settingKey("alder", "alder-1", "fork.main-pressure"), setting, options));
    const lines = changelogView(team.ledger, "kestrel", "alder");
    expect(lines[0]).toMatchObject({ before: undefined, after: "still 62 psi" });
    expect(lines.at(-1)).toMatchObject({ before: undefined, after: expect.stringContaining("first set to") });
  });

  it("has only the lines of the rider that is asked for", () => {
    expect(changelogView(team.ledger, "kestrel", undefined)).toHaveLength(Object.keys(setupValues).length);
    expect(changelogView(team.ledger, "kestrel", "linden")).toEqual([]);
  });
});

function putOn(values: SetupValues): void {
  for (const [path, quantity] of Object.entries(values)) {
    const setting = { quantity, standing: "on the bike", weekend: "kestrel", heldAt: ride } as const;
    written(mia.set(settingKind, `alder/alder-1/${path}`, setting));
  }
}

function proposal(): BaselineProposal {
  const result = proposeBaseline(team.ledger, mounted, "steep", "kestrel", ride);
  if (!result.ok) throw new Error(result.why.join(" "));
  return result.proposal;
}

function manager(): Parameters<typeof createApproval>[0] {
  const writer = team.writerFor("heather");
  return {
    ledger: () => team.ledger,
    write: (entries, options) => writer.setMany(entries, options),
    revert: (recordId) => writer.revert(recordId),
    resolve: (kind, key, value, options) => writer.resolve(kind, key, value, options),
  };
}

/** Two people approve different main pressures for steep, neither seeing the other. */
function approveApart(...pressures: readonly number[]): void {
  const [head] = team.ledger.heads(baselineKind, "alder/steep");
  for (const [index, value] of pressures.entries()) {
    team.ledger.add(
      {
        version: 1,
        id: `01ARZ3NDEKTSV4RRFFQ69G5FA${index}`,
        subject: "baseline:alder/steep",
        value: baseline({ "fork.main-pressure": { value, unit: "psi" } }),
        supersedes: head ? [head.id] : [],
        by: "mia",
        device: `device-${index}`,
        at: "2026-05-29T12:00:00Z",
      },
      "team",
    );
  }
}

function standings() {
  return versionsView(team.ledger, mounted, "steep").map(({ number, standing }) => [number, standing]);
}

function main(value: Baseline | undefined): number | undefined {
  return value?.values["fork.main-pressure"]?.value;
}

function currentMain(): number | undefined {
  const current = team.ledger.current(baselineKind, "alder/steep");
  return current.state === "settled" ? main(current.value) : undefined;
}

function changes(version: ReturnType<typeof versionsView>[number] | undefined) {
  return version?.values.flatMap(({ path, changed }) => (changed === undefined ? [] : [[path, changed]]));
}
