/** What must come of the two weekends; every number is from the scripts and the team's file, or worked out by hand beside it. */
import { afterAll, describe, expect, it } from "vitest";
import { settledValue } from "#core/ledger/ledger.ts";
import { toSi } from "#core/quantity/unit.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import type { ReportedChange } from "#scenarios/report/changelog-report.ts";
import { type Report, reportOn } from "#scenarios/report/report.ts";
import { played, type ScenarioName, scenarioNamed, scenarioNames, upTo } from "./scenario-files.ts";

const plays = {
  "kestrel-ridge": played(scenarioNamed("kestrel-ridge")),
  "otter-hollow": played(scenarioNamed("otter-hollow")),
};
const reports: Record<ScenarioName, Report> = {
  "kestrel-ridge": reportOn(plays["kestrel-ridge"]),
  "otter-hollow": reportOn(plays["otter-hollow"]),
};
afterAll(() => {
  for (const play of Object.values(plays)) play.close();
});

function riderIn(name: ScenarioName, riderId: string) {
  const rider = reports[name].riders.find((candidate) => candidate.rider === riderId);
  if (!rider) throw new Error(`No rider ${riderId}.`);
  return rider;
}

function changesOf(name: ScenarioName, riderId: string, adjuster: ReportedChange["adjuster"]) {
  return riderIn(name, riderId).changelog.filter((change) => change.adjuster === adjuster);
}

const psi = (value: number) => ({ value, unit: "psi" });
const clicks = (value: number) => ({ value, unit: "clicks" });

describe("a dispute", () => {
  it.each([
    ["kestrel-ridge", "hazel", "fork.main-pressure", psi(63), psi(59)],
    ["otter-hollow", "sorrel", "fork.low-speed-compression", clicks(8), clicks(4)],
  ] as const)("on %s shows both values on every device until it is resolved", (name, rider, path, one, other) => {
    const open = played(upTo(scenarioNamed(name), "resolve dispute"));
    const devices = open.devices.filter((device) => device.documents.has(`rider/${rider}/2026`));
    expect(devices.map(({ id }) => id)).toEqual(["pit-laptop", "bench-tablet", "manager-tablet", `phone-${rider}`]);
    for (const { ledger, id } of devices) {
      const current = ledger.current(settingKind, `${rider}/${rider}-bike/${path}`);
      expect(current.state, id).toBe("disputed");
      expect(current.state === "disputed" && current.claims.map(({ value }) => value?.quantity), id).toEqual([
        one,
        other,
      ]);
    }
    expect(reportOn(open).disputes.open).toHaveLength(1);
    open.close();
  });

  it("keeps both claims with author and time when it is resolved", () => {
    const { open, resolved } = reports["kestrel-ridge"].disputes;
    expect(open).toEqual([]);
    expect(resolved).toEqual([
      {
        about: "Mika Hazel, fork main pressure",
        claims: [
          { value: psi(63), by: "Kim Larch", device: "pit-laptop", at: "2026-06-12T09:30:00.000Z" },
          { value: psi(59), by: "Dee Rush", device: "bench-tablet", at: "2026-06-12T09:36:00.000Z" },
        ],
        found: psi(59),
        resolvedBy: "Kim Larch",
        resolvedAt: "2026-06-12T10:12:00.000Z",
      },
    ]);
    const last = changesOf("kestrel-ridge", "hazel", "fork.main-pressure").at(-1);
    expect(last).toMatchObject({ from: [psi(63), psi(59)], to: psi(59), cause: "resolution" });
  });

  it("is none when two devices set the same value apart", () => {
    const apart = changesOf("otter-hollow", "willow", "rear-tyre.tyre-pressure").slice(-2);
    expect(apart.map(({ by, to }) => [by, to?.value])).toEqual([
      ["Dee Rush", 1.65],
      ["Kim Larch", 1.65],
    ]);
    const { ledger } = plays["otter-hollow"].devices[0] ?? {};
    const current = ledger?.current(settingKind, "willow/willow-bike/rear-tyre.tyre-pressure");
    expect(current && settledValue(current)?.quantity).toEqual({ value: 1.65, unit: "bar" });
    expect(reports["otter-hollow"].disputes.open).toEqual([]);
  });
});

describe("the changelog", () => {
  it("names the cause and the run that a change answers", () => {
    const change = changesOf("kestrel-ridge", "alder", "fork.secondary-pressure").find(
      ({ cause }) => cause === "advice",
    );
    expect(change).toMatchObject({ by: "Kim Larch", run: "run 1, Practice 1", at: "2026-06-12T08:52:00.000Z" });
    expect(change?.why).toContain("All travel is used too often");
  });

  it("holds an undo, which restores exactly the value before", () => {
    const changes = changesOf("kestrel-ridge", "linden", "fork.low-speed-compression");
    expect(changes.map(({ from, to, cause }) => [from, to, cause])).toEqual([
      [[], clicks(6), "conditions"],
      [[clicks(6)], clicks(4), "advice"],
      [[clicks(4)], clicks(6), "revert"],
    ]);
  });

  it("opens a run again when the change that answered it is undone, and names the run when it is answered by hand", () => {
    const kestrel = scenarioNamed("kestrel-ridge");
    const undone = played(upTo(kestrel, "set by hand"));
    const linden = reportOn(undone).riders.find(({ rider }) => rider === "linden");
    expect(linden?.runs[0]?.decision).toBeUndefined();
    undone.close();
    expect(riderIn("kestrel-ridge", "linden").runs[0]?.decision).toBe("adjusted");
    expect(changesOf("kestrel-ridge", "linden", "fork.main-pressure").at(-1)).toMatchObject({
      to: psi(87),
      cause: "by hand",
      run: "run 1, Practice 1",
      why: "Set by hand: He wants it to stand higher rather than to damp more.",
    });
  });

  it("holds the way back to the baseline", () => {
    expect(changesOf("kestrel-ridge", "bramble", "fork.low-speed-compression").at(-1)).toMatchObject({
      from: [clicks(7)],
      to: clicks(5),
      cause: "own baseline",
    });
  });

  it("holds a rider's change on the hill as reported, until a mechanic confirms it", () => {
    const changes = changesOf("kestrel-ridge", "bramble", "shock.rebound").slice(1);
    expect(changes.map(({ by, to, standing, cause }) => [by, to, standing, cause])).toEqual([
      ["Tess Bramble", clicks(7), "reported", "own change"],
      ["Kim Larch", clicks(7), "on the bike", "confirmation"],
    ]);
  });

  it.each(scenarioNames)("of %s never brings a secondary chamber within 5 psi of the main one", (name) => {
    let pairs = 0;
    for (const { changelog, rider } of reports[name].riders) {
      const now = new Map<string, number>();
      for (const { adjuster, to } of changelog) {
        if (to) now.set(adjuster, toSi(to));
        const main = now.get("fork.main-pressure");
        const secondary = now.get("fork.secondary-pressure");
        if (main === undefined || secondary === undefined) continue;
        pairs += 1;
        expect(secondary - main, rider).toBeGreaterThanOrEqual(5 * 6894.757 - 1);
      }
    }
    expect(pairs).toBeGreaterThan(50);
  });
});

describe("an approved baseline", () => {
  it("is a second version, and the first stays as it was", () => {
    const { steep, jumpy } = riderIn("kestrel-ridge", "alder").baselines;
    const original = scenarioNamed("kestrel-ridge").team.baselines.alder?.steep;
    expect(steep.map(({ by, approved, current }) => [by, approved, current])).toEqual([
      ["Kim Larch", false, false],
      ["Lou Heather", true, true],
    ]);
    expect(steep[0]?.values).toEqual(original?.values);
    // Set to 154 psi at 12 °C, ridden at 26 °C, both at 2010 m (79.4 kPa): (1061.8 + 79.4) · 299.15 / 285.15 − 79.4
    // = 1117.8 kPa = 162 psi.
    expect(steep[1]?.values["fork.secondary-pressure"]).toEqual(psi(162));
    expect(jumpy).toHaveLength(1);
  });
});

describe("the setup sheet", () => {
  it("adds support late in the stroke for thinner air at 2010 m", () => {
    const { sheet } = riderIn("kestrel-ridge", "hazel");
    const main = "rows" in sheet ? sheet.rows.find(({ adjuster }) => adjuster === "fork.main-pressure") : undefined;
    const altitude = main?.reasons.find(({ rule }) => rule === "altitude");
    expect(altitude?.change?.value).toBeGreaterThan(0);
    expect(altitude?.provenance).toBe("physics");
  });

  it("falls back on common practice for a rider without a wet baseline", () => {
    const { sheet } = riderIn("otter-hollow", "juniper");
    const rules = "rows" in sheet ? sheet.rows.flatMap(({ reasons }) => reasons.map(({ rule }) => rule)) : [];
    expect(rules).toContain("no-baseline-wet");
    const other = riderIn("otter-hollow", "hazel").sheet;
    const otherRules = "rows" in other ? other.rows.flatMap(({ reasons }) => reasons.map(({ rule }) => rule)) : [];
    expect(otherRules).not.toContain("no-baseline-wet");
  });
});

describe("a taken adjustment", () => {
  it("foretells less travel for the hit that used it all", () => {
    const [taken] = riderIn("kestrel-ridge", "alder").adjustments;
    expect(taken).toMatchObject({ rule: "full-travel-too-easily", fitted: true, before: { strokeUsedMm: 200 } });
    expect(taken?.after?.strokeUsedMm).toBeLessThan(200);
    expect(taken?.after?.sagMm).toBe(taken?.before?.sagMm);
  });

  it("brings its rebound along when the spring's rate changes", () => {
    const [taken] = riderIn("otter-hollow", "thistle").adjustments;
    expect(taken?.setting.path).toBe("shock.spring-rate");
    expect(taken?.coupled.map(({ path }) => path)).toEqual(["shock.rebound"]);
    const batch = changesOf("otter-hollow", "thistle", "shock.rebound").at(-1);
    expect(batch?.cause).toBe("advice");
  });
});

describe("the force curves of a taken adjustment", () => {
  it("rise with the stroke, end at the full stroke, and are higher late in it after more secondary pressure", () => {
    const adjustment = riderIn("kestrel-ridge", "alder").adjustments.find(
      ({ setting }) => setting.path === "fork.secondary-pressure",
    );
    const { before, after } = adjustment?.curves ?? { before: [], after: [] };
    expect(before).toHaveLength(21);
    for (const curve of [before, after]) {
      const forces = curve.map(([, force]) => force);
      expect(forces).toEqual([...forces].sort((a, b) => a - b));
      expect(curve.at(-1)?.[0]).toBe(200);
    }
    expect(after.at(0)?.[1]).toBe(before.at(0)?.[1]);
    expect(after.at(-1)?.[1]).toBeGreaterThan(before.at(-1)?.[1] ?? Number.POSITIVE_INFINITY);
  });
});
