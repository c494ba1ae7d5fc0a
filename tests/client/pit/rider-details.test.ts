import { createRoot } from "solid-js";
import { describe, expect, test } from "vitest";
import type { Device } from "#client/device/create-device.ts";
import { createActs } from "#client/pit/create-acts.ts";
import { createRiderDetails, type RiderDetailsState } from "#client/pit/rider/create-rider-details.ts";
import { settledValue } from "#core/ledger/ledger.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { enterCourse, type TeamLedger, teamLedger, written } from "#tests/builders/team-ledger.ts";
import { MAIN, sheetFor } from "./pit-team.ts";

function withDetails(team: TeamLedger, act: (details: RiderDetailsState, notice: () => string | undefined) => void) {
  const mia = team.writerFor("mia");
  const device: Pick<Device, "ledger" | "write"> = {
    ledger: () => team.ledger,
    write: (entries, options) => mia.setMany(entries, options),
  };
  createRoot((dispose) => {
    const acts = createActs(device as Device);
    act(createRiderDetails(device, acts, "alder"), acts.notice);
    dispose();
  });
}

const riderOf = ({ ledger }: TeamLedger) => settledValue(ledger.current(riderKind, "alder"));

describe("the rider's details", () => {
  test("are saved with all else that is known of the rider, and a heavier rider gets more main pressure", () => {
    const team = teamLedger();
    enterCourse(team.writerFor("mia"));
    const before = riderOf(team);
    const pressure = () => sheetFor(team).rows.find(({ path }) => path === MAIN)?.bench?.value ?? 0;
    const was = pressure();
    withDetails(team, (details, notice) => {
      expect(details.draft().mass).toBe(80);
      details.set({ mass: 90, frontShare: 0.42 });
      expect(details.save()).toBe(true);
      expect(notice()).toBe(`Saved: ${before?.name}, 90 kg, front share 0.42`);
    });
    expect(riderOf(team)).toEqual({ ...before, mass: { value: 90, unit: "kg" }, frontShare: 0.42 });
    expect(pressure()).toBeGreaterThan(was);
  });

  test("an empty front share takes it away again", () => {
    const team = teamLedger();
    withDetails(team, (details) => {
      details.set({ frontShare: 0.42 });
      details.save();
      details.set({ frontShare: undefined });
      expect(details.save()).toBe(true);
    });
    expect(riderOf(team)).not.toHaveProperty("frontShare");
  });

  test("without a mass, or out of range, nothing is written and the sentence says what is allowed", () => {
    const team = teamLedger();
    const { size } = team.ledger;
    withDetails(team, (details) => {
      details.set({ mass: undefined });
      expect(details.save()).toBe(false);
      expect(details.problem()).toBe("Mass with kit: enter the mass.");
      details.set({ mass: 20 });
      expect(details.save()).toBe(false);
      expect(details.problem()).toBe("Mass: 20 kg is outside 30 kg to 160 kg.");
    });
    expect(team.ledger.size).toBe(size);
  });

  test("a mass in pounds stays as it was typed while only the front share changes", () => {
    const team = teamLedger();
    const rider = riderOf(team);
    if (!rider) throw new Error("The team has no rider.");
    written(team.writerFor("mia").set(riderKind, "alder", { ...rider, mass: { value: 175, unit: "lb" } }));
    withDetails(team, (details) => {
      expect(details.draft().mass).toBe(79.4);
      details.set({ frontShare: 0.4 });
      details.save();
    });
    expect(riderOf(team)?.mass).toEqual({ value: 175, unit: "lb" });
  });

  test("what somebody else saved meanwhile stays; the same field is told once before it is replaced", () => {
    const team = teamLedger();
    const rider = riderOf(team);
    if (!rider) throw new Error("The team has no rider.");
    withDetails(team, (details) => {
      written(team.writerFor("nils").set(riderKind, "alder", { ...rider, mass: { value: 82, unit: "kg" } }));
      details.set({ frontShare: 0.4 });
      expect(details.save()).toBe(true);
      expect(riderOf(team)).toMatchObject({ mass: { value: 82, unit: "kg" }, frontShare: 0.4 });
      written(team.writerFor("nils").set(riderKind, "alder", { ...rider, mass: { value: 83, unit: "kg" } }));
      details.set({ mass: 90 });
      expect(details.save()).toBe(false);
      expect(details.problem()).toContain("Somebody else has changed this");
      expect(details.save()).toBe(true);
    });
    expect(riderOf(team)?.mass.value).toBe(90);
  });

  test("the riding style is saved, and taken back where it was chosen by mistake", () => {
    const team = teamLedger();
    withDetails(team, (details) => {
      details.set({ style: "hard" });
      expect(details.save()).toBe(true);
      expect(riderOf(team)?.style).toBe("hard");
      details.set({ style: undefined });
      expect(details.save()).toBe(true);
    });
    expect(riderOf(team)).not.toHaveProperty("style");
  });
});
