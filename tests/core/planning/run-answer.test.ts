import { beforeEach, describe, expect, it } from "vitest";
import { feedbackRules } from "#core/advice/feedback-rules/rule-table.ts";
import type { Writer } from "#core/ledger/write.ts";
import { approvals } from "#core/planning/baseline-approvals.ts";
import { describeCause } from "#core/planning/changelog-text.ts";
import { answerToRun } from "#core/planning/run-answer.ts";
import { baselineKind } from "#core/team/record-kinds.ts";
import { settingKey } from "#core/weekend/on-the-bike.ts";
import { decisionKind, runKind, settingKind } from "#core/weekend/record-kinds.ts";
import { type LoggedRun, loggedRuns } from "#core/weekend/runs.ts";
import { baseline } from "#tests/builders/bike.ts";
import { type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const key = settingKey("alder", "alder-1", "fork.low-speed-compression");
const clicks = (value: number) =>
  ({ quantity: { value, unit: "clicks" }, standing: "on the bike", weekend: "kestrel" }) as const;

let team: TeamLedger;
let mia: Writer;

beforeEach(() => {
  team = teamLedger();
  mia = team.writerFor("mia");
  written(mia.set(settingKind, key, clicks(9), { cause: { type: "setup" } }));
  const run = { bike: "alder-1", weekend: "kestrel", session: "p1", front: { middle: "dives" as const }, rear: {} };
  written(mia.set(runKind, "alder/run-1", run));
});

describe("the answer to a run", () => {
  it("is open until somebody decides", () => {
    expect(answerToRun(team.ledger, logged())).toMatchObject({ outcome: "not decided", changes: [], rules: [] });
  });

  it("tells what was changed for it, why, and what to notice", () => {
    const rule = feedbackRules.find(({ id }) => id === "fork-dives");
    written(mia.set(settingKind, key, clicks(7), { cause: { type: "advice", rule: "fork-dives", run: "run-1" } }));
    written(mia.set(decisionKind, "alder/run-1", { outcome: "adjusted" }));
    const answer = answerToRun(team.ledger, logged());
    expect(answer.outcome).toBe("adjusted");
    expect(answer.changes).toMatchObject([{ from: [{ value: 9, unit: "clicks" }], to: { value: 7, unit: "clicks" } }]);
    expect(answer.rules).toEqual(["fork-dives"]);
    expect(answer.changes.map(describeCause)).toEqual([rule?.reason]);
  });

  it("leaves out changes that answer another run or none", () => {
    written(mia.set(settingKind, key, clicks(6), { cause: { type: "advice", rule: "fork-dives", run: "run-2" } }));
    written(mia.set(settingKind, key, clicks(5), { cause: { type: "by hand" } }));
    expect(answerToRun(team.ledger, logged()).changes).toEqual([]);
  });

  it("says so when the bike was left as it is", () => {
    written(mia.set(decisionKind, "alder/run-1", { outcome: "left as it is", note: "Ride it once more." }));
    expect(answerToRun(team.ledger, logged())).toMatchObject({ outcome: "left as it is", note: "Ride it once more." });
  });

  it("says so when two people decided differently while apart", () => {
    for (const [id, outcome] of [
      ["01ARZ3NDEKTSV4RRFFQ69G5FA1", "adjusted"],
      ["01ARZ3NDEKTSV4RRFFQ69G5FA2", "left as it is"],
    ] as const) {
      team.ledger.add(
        {
          version: 1,
          id,
          subject: "decision:alder/run-1",
          value: { outcome },
          supersedes: [],
          by: id,
          device: id,
          at: "2026-05-29T12:00:00Z",
        },
        "rider/alder/2026",
      );
    }
    expect(answerToRun(team.ledger, logged()).outcome).toBe("disputed");
  });
});

describe("the baselines approved from a weekend", () => {
  it("are those whose record says so, of the rider that is asked for", () => {
    const cause = { type: "approval", weekend: "kestrel" } as const;
    const values = { "fork.rebound": { value: 6, unit: "clicks" } } as const;
    const [record] = written(mia.set(baselineKind, "alder/steep", baseline(values), { cause }));
    written(mia.set(baselineKind, "alder/jumpy", baseline(values), { cause: { ...cause, weekend: "another" } }));
    expect(approvals(team.ledger, { weekend: "kestrel" })).toEqual([{ record, riderId: "alder", type: "steep" }]);
    expect(approvals(team.ledger, { weekend: "kestrel", riderId: "linden" })).toEqual([]);
  });
});

function logged(): LoggedRun {
  const [run] = loggedRuns(team.ledger, "kestrel", "alder");
  if (!run) throw new Error("No run was logged.");
  return run;
}
