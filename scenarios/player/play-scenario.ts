/** Plays a scenario on simulated devices, and brings them together at the end. */

import { recordsName } from "#core/ledger/document.ts";
import { documentNameFor } from "#core/ledger/documents.ts";
import { examineJson } from "#core/ledger/plain-json.ts";
import { describeLedgerProblem } from "#core/ledger/write.ts";
import { stepInWords } from "#scenarios/gate/place-in-words.ts";
import type { Scenario } from "#scenarios/schema/scenario.ts";
import type { TakenAdjustment } from "./acts/act.ts";
import { createChance } from "./chance.ts";
import { knownFromTheStart, teamEntries, weekendEntries } from "./initial-entries.ts";
import { createNetwork } from "./network.ts";
import { performStep } from "./perform-step.ts";
import { createSimulatedDevice, type SimulatedDevice } from "./simulated-device.ts";

/** A scenario that was played to its end; all devices are connected and hold the same. */
export interface PlayedScenario {
  readonly scenario: Scenario;
  readonly devices: readonly SimulatedDevice[];
  /** In the order in which they were taken. */
  readonly taken: readonly TakenAdjustment[];
  close(): void;
}

/** Played, or the sentence of the first step that could not be done. */
export type PlayResult =
  | { readonly ok: true; readonly played: PlayedScenario }
  | { readonly ok: false; readonly sentence: string };

/**
 * Plays every step on its device at its time. After each step the network comes to rest, save for devices that are cut
 * off; after the last one those are reconnected too.
 * @param seed of ids and of the order of delivery, a whole number from 1 to 2³² − 1.
 * @throws Error when devices do not hold the same in the end, which is a fault of the program.
 */
export function playScenario(scenario: Scenario, seed: number = scenario.seed): PlayResult {
  const clock = { now: Date.parse(scenario.startsAt) - MINUTE };
  const chance = createChance(seed);
  const network = createNetwork(chance);
  const devices = new Map(
    scenario.devices.map(({ id, member }) => {
      const documentNames = documentsFor(scenario, member);
      const season = seasonIn(scenario);
      return [id, createSimulatedDevice({ id, member, documentNames, season, chance, now: () => clock.now })];
    }),
  );
  const close = (): void => {
    for (const device of devices.values()) device.close();
    network.close();
  };
  for (const device of devices.values()) network.join(device);
  writeStart(scenario, devices.values().next().value);
  network.settle();
  const taken: TakenAdjustment[] = [];
  for (const [index, step] of scenario.steps.entries()) {
    clock.now = timeOf(scenario, index);
    const device = devices.get(step.device);
    if (device === undefined) throw new Error(`A step names the unknown device ${step.device}.`);
    const done = performStep({ device, weekendId: scenario.weekend.id }, network, step);
    if (!done.ok) {
      close();
      const rider = "rider" in step ? ` for ${step.rider}` : "";
      return { ok: false, sentence: `${stepInWords(index, step)}, on ${step.device}${rider}: ${done.sentence}` };
    }
    if (done.taken) taken.push(done.taken);
    network.settle();
  }
  for (const id of network.cutOff()) network.reconnect(id);
  network.settle();
  assertConverged([...devices.values()]);
  return { ok: true, played: { scenario, devices: [...devices.values()], taken, close } };
}

const MINUTE = 60_000;

/** Steps of the same minute are a second apart, so that every record of the story has its own time. */
function timeOf({ startsAt, steps }: Scenario, index: number): number {
  const at = steps[index]?.at ?? 0;
  const before = steps.slice(0, index).filter((step) => step.at === at).length;
  return Date.parse(startsAt) + Math.round(at * MINUTE) + before * 1000;
}

function seasonIn({ weekend }: Scenario): number {
  return Number(weekend.startsOn.slice(0, 4));
}

/** A rider's device holds the team's document and his own; all others hold every rider's. */
function documentsFor(scenario: Scenario, memberId: string): readonly string[] {
  const member = scenario.team.members[memberId];
  const riders = member?.role === "rider" ? [member.rider ?? memberId] : Object.keys(scenario.team.riders);
  const year = seasonIn(scenario);
  return [
    documentNameFor({ scope: "team" }),
    ...riders.map((rider) => documentNameFor({ scope: "rider", rider, year })),
  ];
}

function writeStart(scenario: Scenario, device: SimulatedDevice | undefined): void {
  if (device === undefined) throw new Error("A scenario without a device passed the gate.");
  const entries = [...teamEntries(scenario.team), ...weekendEntries(scenario), ...knownFromTheStart(scenario)];
  const written = device.writer.setMany(entries, { cause: { type: "setup" } });
  if (!written.ok) throw new Error(`What passed the gate cannot be written: ${describeLedgerProblem(written.problem)}`);
}

function assertConverged(devices: readonly SimulatedDevice[]): void {
  const seen = new Map<string, string>();
  for (const device of devices) {
    if (device.ledger.unreadable().length > 0) throw new Error(`The device ${device.id} holds records it cannot read.`);
    for (const [name, ydoc] of device.documents) {
      const texts = ydoc
        .getArray<unknown>(recordsName)
        .toArray()
        .map((raw) => examineJson(raw).text);
      const content = texts.sort().join("\n");
      if ((seen.get(name) ?? content) !== content) throw new Error(`The devices hold different records in ${name}.`);
      seen.set(name, content);
    }
  }
}
