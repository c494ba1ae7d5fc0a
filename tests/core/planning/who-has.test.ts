import { describe, expect, test } from "vitest";
import { type DevicesOf, type SetupHolding, whoHasSetup } from "#core/planning/who-has.ts";
import { memberKind } from "#core/team/record-kinds.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";
import { teamLedger, written } from "#tests/builders/team-ledger.ts";

/** The team with two settings on Alder's bike; gives the ids of their records. */
function setTeam() {
  const team = teamLedger();
  const writer = team.writerFor("mia");
  written(
    writer.setMany([
      { kind: memberKind, key: "rowan", value: { name: "Rowan", role: "rider", rider: "alder" } },
      { kind: memberKind, key: "sol", value: { name: "Sol", role: "rider", rider: "somebody-else" } },
      { kind: memberKind, key: "lou", value: { name: "Lou", role: "manager" } },
    ]),
  );
  const set = (path: string, value: number) =>
    written(
      writer.set(settingKind, `alder/alder-1/${path}`, {
        quantity: { value, unit: "psi" },
        standing: "on the bike",
        weekend: "kestrel",
      }),
    )[0]?.id ?? "";
  return { team, pressure: set("fork.main-pressure", 60), tyre: set("rear-tyre.tyre-pressure", 24), set };
}

/** Devices that hold these records: [device, member, record …]. */
function devices(...held: readonly (readonly [string, string | undefined, ...string[]])[]): DevicesOf {
  return (id) => held.filter(([, , ...ids]) => ids.includes(id)).map(([device, member]) => ({ device, member }));
}

const missing = (holding: SetupHolding | undefined) =>
  Object.fromEntries((holding?.holders ?? []).map(({ memberId, missing: count }) => [memberId, count]));

describe("who has what is on a rider's bike", () => {
  test("asks for the rider, the mechanics and the managers, and for nobody else's rider", () => {
    const { team } = setTeam();
    const holding = whoHasSetup(team.ledger, "alder", devices());
    expect(holding?.settings).toBe(2);
    expect(Object.keys(missing(holding))).toEqual(expect.arrayContaining(["mia", "rowan", "lou"]));
    expect(missing(holding)).not.toHaveProperty("sol");
    expect(Object.values(missing(holding))).toEqual([2, 2, 2]);
  });

  test("counts the device of a member that has most; two halves on two devices are no whole", () => {
    const { team, pressure, tyre } = setTeam();
    const holding = whoHasSetup(
      team.ledger,
      "alder",
      devices(["laptop", "mia", pressure, tyre], ["phone", "rowan", pressure], ["tablet", "rowan", tyre]),
    );
    expect(missing(holding)).toMatchObject({ mia: 0, rowan: 1, lou: 2 });
  });

  test("counts a device that nobody has named for nobody", () => {
    const { team, pressure, tyre } = setTeam();
    expect(missing(whoHasSetup(team.ledger, "alder", devices(["phone", undefined, pressure, tyre])))).toMatchObject({
      rowan: 2,
    });
  });

  test("asks anew after a change: who had the old value lacks the new one", () => {
    const { team, pressure, tyre, set } = setTeam();
    const held = devices(["phone", "rowan", pressure, tyre]);
    expect(missing(whoHasSetup(team.ledger, "alder", held))).toMatchObject({ rowan: 0 });
    set("fork.main-pressure", 62);
    expect(missing(whoHasSetup(team.ledger, "alder", held))).toMatchObject({ rowan: 1 });
  });

  test("has no answer for a rider without a bike", () => {
    expect(whoHasSetup(setTeam().team.ledger, "nobody", devices())).toBeUndefined();
  });
});
