import { beforeEach, describe, expect, it } from "vitest";
import type { Writer } from "#core/ledger/write.ts";
import { proposeBaseline } from "#core/planning/baseline-review.ts";
import { confirmationEntry } from "#core/planning/entries.ts";
import { riddenSag } from "#core/planning/ridden-sag.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type RiderBike, riderBike } from "#core/team/roster.ts";
import { settingKey, settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { runKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { EndFeedback } from "#core/weekend/run.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";

const ride = { temperature: { value: 20, unit: "°C" }, altitude: { value: 0, unit: "m" } } as const;
const mm = (value: number) => ({ value, unit: "mm" }) as const;

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
  set("fork.main-pressure", 60);
  set("fork.rebound", 8, "clicks");
  set("shock.rebound", 7, "clicks");
});

describe("the sag that was measured with what is on the bike now", () => {
  it("is that of the weekend's latest run that measured it, at each end", () => {
    logRun("run-1", { front: { sag: mm(40) }, rear: { sag: mm(18) } });
    logRun("run-2", { front: { sag: mm(38) } });
    expect(riddenSag(team.ledger, mounted, "kestrel")).toEqual({ fork: mm(38), shock: mm(18) });
  });

  it("is left out at an end where anything on the part was set since", () => {
    logRun("run-1", { front: { sag: mm(40) }, rear: { sag: mm(18) } });
    set("fork.rebound", 7, "clicks");
    expect(riddenSag(team.ledger, mounted, "kestrel")).toEqual({ shock: mm(18) });
  });

  it("is left out when an older run would fit but the latest measurement does not", () => {
    logRun("run-1", { front: { sag: mm(40) } });
    set("fork.main-pressure", 62);
    logRun("run-2", { front: { sag: mm(37) } });
    set("fork.main-pressure", 60);
    expect(riddenSag(team.ledger, mounted, "kestrel")).toEqual({});
  });

  it("is left out while the part has a dispute", () => {
    logRun("run-1", { front: { sag: mm(40) } });
    const key = settingKey("alder", "alder-1", "fork.main-pressure");
    const [head] = team.ledger.heads(settingKind, key);
    for (const [id, value] of [
      ["01ARZ3NDEKTSV4RRFFQ69G5FA1", 61],
      ["01ARZ3NDEKTSV4RRFFQ69G5FA2", 63],
    ] as const) {
      team.ledger.add(
        {
          version: 1,
          id,
          subject: `setting:${key}`,
          value: { quantity: { value, unit: "psi" }, standing: "on the bike" },
          supersedes: head ? [head.id] : [],
          by: id,
          device: id,
          at: "2026-05-29T12:00:00Z",
        },
        "rider/alder/2026",
      );
    }
    expect(team.ledger.current(settingKind, key).state).toBe("disputed");
    expect(riddenSag(team.ledger, mounted, "kestrel")).toEqual({});
  });

  it("is left out for a run that does not say what it was ridden with", () => {
    written(mia.set(runKind, "alder/run-1", run({ front: { sag: mm(40) } })));
    expect(riddenSag(team.ledger, mounted, "kestrel")).toEqual({});
  });

  it("stays when a mechanic only confirms what the rider had reported before the run", () => {
    set("fork.main-pressure", 58, "psi", "reported");
    logRun("run-1", { front: { sag: mm(41) } });
    const current = settingsOnBike(team.ledger, mounted).get("fork.main-pressure");
    const confirmed = confirmationEntry(mounted, "fork.main-pressure", current ?? { state: "absent" });
    if (!confirmed.ok) throw new Error(confirmed.problem.type);
    written(mia.setMany(confirmed.entries, { force: true }));
    expect(riddenSag(team.ledger, mounted, "kestrel")).toEqual({ fork: mm(41) });
  });

  it("is left out when a baseline could not hold it", () => {
    logRun("run-1", { front: { sag: mm(0) } });
    expect(riddenSag(team.ledger, mounted, "kestrel")).toEqual({});
  });
});

describe("the proposed baseline", () => {
  it("carries the sag of the setup that is on the bike", () => {
    logRun("run-1", { front: { sag: mm(40) } });
    const result = proposeBaseline(team.ledger, mounted, "steep", "kestrel", ride);
    expect(result.ok && result.proposal.entry.value.sag).toEqual({ fork: mm(40) });
  });

  it("has no sag when none belongs to the setup", () => {
    const result = proposeBaseline(team.ledger, mounted, "steep", "kestrel", ride);
    expect(result.ok && Object.hasOwn(result.proposal.entry.value, "sag")).toBe(false);
  });
});

function set(
  path: AdjusterPath,
  value: number,
  unit: Setting["quantity"]["unit"] = "psi",
  standing: Setting["standing"] = "on the bike",
): void {
  const setting: Setting = { quantity: { value, unit }, standing, weekend: "kestrel", heldAt: ride };
  written(mia.set(settingKind, settingKey("alder", "alder-1", path), setting));
}

function run(said: { readonly front?: EndFeedback; readonly rear?: EndFeedback }, setup?: readonly string[]) {
  return {
    bike: "alder-1",
    weekend: "kestrel",
    session: "p1",
    front: said.front ?? {},
    rear: said.rear ?? {},
    ...(setup && { setup: [...setup] }),
  };
}

/** A run that names everything that is settled on the bike at that moment. */
function logRun(id: string, said: { readonly front?: EndFeedback; readonly rear?: EndFeedback }): void {
  const setup = [...settingsOnBike(team.ledger, mounted).values()].flatMap((current) =>
    current.state === "settled" ? current.heads.map((head) => head.id) : [],
  );
  written(mia.set(runKind, `alder/${id}`, run(said, setup)));
}
