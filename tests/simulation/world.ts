/** One simulated race weekend: a server, devices, and what happens to them; everything comes from one seed. */
import { riderKind } from "#core/team/record-kinds.ts";
import { weekendKind } from "#core/weekend/record-kinds.ts";
import { createChance } from "./chance.ts";
import { describeHappening, type Happening, nextHappening } from "./happening.ts";
import type { Mutation } from "./mutation.ts";
import { createSimulatedDevice, type SimulatedDevice } from "./simulated-device.ts";
import { createSimulatedServer } from "./simulated-server.ts";
import { createVirtualTime } from "./virtual-time.ts";
import { createWitness, type Fault } from "./witness.ts";

/** The first morning of the simulated weekend. */
const MORNING = Date.UTC(2026, 4, 29, 8);
/** What happens comes this far apart, ms. */
const LONGEST_PAUSE_MS = 400;
/**
 * After the last happening everything is repaired, and this long is given at most to become equal, ms: a document that
 * takes turns looks for news within a minute.
 */
const QUIET_MS = 200_000;
/** Events after which a simulation that does not end has gone wrong. */
const MOST_EVENTS = 60_000;

export interface SimulationResult {
  readonly seed: number;
  /** The first fault that was seen; absent when all went well. */
  readonly fault: Fault | undefined;
  /** What happened, in order, until the fault or the end. */
  readonly script: readonly string[];
  readonly events: number;
  readonly records: number;
}

export interface SimulationOptions {
  readonly seed: number;
  /** How many things happen. */
  readonly happenings: number;
  readonly mutation?: Mutation;
}

/** Runs one seed. The same options give the same result. */
export async function simulate({ seed, happenings, mutation }: SimulationOptions): Promise<SimulationResult> {
  const chance = createChance(seed);
  const time = createVirtualTime(MORNING);
  const devices: SimulatedDevice[] = [];
  const server = createSimulatedServer({
    time,
    chance,
    mutation,
    onKilled: () => {
      for (const device of devices) device.network.dropAll();
    },
  });
  const count = chance.whole(2, 5);
  for (let index = 0; index < count; index += 1) {
    const clockOffset = chance.happens(0.3) ? chance.whole(-12, 12) * 3_600_000 : 0;
    const fewSockets = chance.happens(0.2);
    const name = `device-${index}`;
    devices.push(createSimulatedDevice({ name, time, chance, server, mutation, clockOffset, fewSockets }));
  }
  const witness = createWitness(devices, server);
  const script: string[] = [];
  let events = 0;

  const run = async (until: number): Promise<void> => {
    while (witness.fault() === undefined && (await time.step(until))) {
      events += 1;
      if (events > MOST_EVENTS) witness.report("the simulation does not come to rest");
      witness.look();
    }
  };

  for (const device of devices) device.start();
  await run(time.now() + 300);
  foundTeam(devices);
  for (let index = 0; index < happenings && witness.fault() === undefined; index += 1) {
    await run(time.now() + chance.whole(0, LONGEST_PAUSE_MS));
    const happening: Happening = nextHappening(chance, devices);
    script.push(`${time.now() - MORNING} ms: ${describeHappening(happening)}`);
    happening.act({ devices, server, witness, chance });
    witness.judgeReceipts();
  }
  if (witness.fault() === undefined) {
    script.push(`${time.now() - MORNING} ms: everything is repaired`);
    repair(devices, server);
    const latest = time.now() + QUIET_MS;
    while (!witness.isQuiet() && time.now() < latest && witness.fault() === undefined) await run(time.now() + 1000);
    witness.judgeQuiet();
  }
  const records = devices[0]?.running()?.ledger.size ?? 0;
  for (const device of devices) device.die();
  return { seed, fault: witness.fault(), script, events, records };
}

/** The team that there is before anything happens: two riders and a weekend. */
function foundTeam(devices: readonly SimulatedDevice[]): void {
  const first = devices[0]?.running();
  if (!first?.isLoaded()) return;
  first.writerFor("founder").setMany([
    { kind: weekendKind, key: "kestrel", value: { name: "Kestrel", venue: "ridge", startsOn: "2026-05-29" } },
    { kind: riderKind, key: "alder", value: { name: "Alder", mass: { value: 80, unit: "kg" }, bike: "alder-1" } },
    { kind: riderKind, key: "linden", value: { name: "Linden", mass: { value: 70, unit: "kg" }, bike: "linden-1" } },
  ]);
}

function repair(devices: readonly SimulatedDevice[], server: ReturnType<typeof createSimulatedServer>): void {
  server.calm();
  for (const device of devices) {
    device.disk.setFull(false);
    device.network.setTrouble(0);
    device.network.setState("up");
    // Closed and opened once more: what another tab has kept comes in.
    device.network.dropAll();
    device.die();
    device.start();
  }
}
