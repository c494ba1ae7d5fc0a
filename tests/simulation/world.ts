/** One simulated race weekend: servers, devices, and what happens to them; everything comes from one seed. */
import { riderKind } from "#core/team/record-kinds.ts";
import { weekendKind } from "#core/weekend/record-kinds.ts";
import { chanceOf } from "./chance.ts";
import { planWeekend } from "./happening.ts";
import type { Mutation } from "./mutation.ts";
import { createSimulatedDevice, type SimulatedDevice } from "./simulated-device.ts";
import { createSimulatedNetwork } from "./simulated-network.ts";
import { createSimulatedServer, type SimulatedServer } from "./simulated-server.ts";
import { createVirtualTime, type VirtualTime } from "./virtual-time.ts";
import { createWitness, type Fault } from "./witness.ts";

/** The first morning of the simulated weekend. */
const MORNING = Date.UTC(2026, 4, 29, 8);
/**
 * After the last happening everything is repaired, and this long is given at most to become equal, ms: a document that
 * takes turns looks for news within a minute.
 */
const QUIET_MS = 200_000;
/** Until then whatever was spoiled before the repair has arrived, and its answer too, ms. */
const STRAY_MS = 1000;
/** Events after which a simulation that does not end has gone wrong. */
const MOST_EVENTS = 90_000;

export interface SimulationResult {
  readonly seed: number;
  /** The first fault that was seen; absent when all went well. */
  readonly fault: Fault | undefined;
  /** What happened, in order, until the fault or the end. */
  readonly script: readonly string[];
  /** Numbers of what was let happen; absent when everything was. */
  readonly only?: ReadonlySet<number>;
  readonly events: number;
  readonly records: number;
}

export interface SimulationOptions {
  readonly seed: number;
  /** How many things happen. */
  readonly happenings: number;
  /** Numbers of those that do happen; all when absent. */
  readonly only?: ReadonlySet<number>;
  readonly mutation?: Mutation;
}

/** Runs one seed. The same options give the same result. */
export async function simulate({ seed, happenings, only, mutation }: SimulationOptions): Promise<SimulationResult> {
  const chance = chanceOf(seed, 0);
  const time = createVirtualTime(MORNING);
  const devices: SimulatedDevice[] = [];
  const servers = createServers(seed, time, devices, mutation);
  const count = chance.happens(0.15) ? chance.whole(5, 8) : chance.whole(2, 4);
  for (let index = 0; index < count; index += 1) {
    const clockOffset = chance.happens(0.3) ? chance.whole(-12, 12) * 3_600_000 : 0;
    devices.push(
      createSimulatedDevice({
        name: `device-${index}`,
        // The first device founds the team, so it is of today.
        isOld: chance.happens(0.2) && index > 0,
        time,
        chance: chanceOf(seed, 100 + index),
        server: chance.one(servers),
        mutation,
        fewSockets: chance.happens(0.2),
        clockOffset,
      }),
    );
  }
  const plan = planWeekend(chanceOf(seed, 1), { devices: count, servers: servers.length }, happenings);
  const witness = createWitness({ devices, servers, time });
  const script: string[] = [describeCast(devices, servers)];
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
  for (const [index, happening] of plan.entries()) {
    await run(time.now() + happening.pause);
    if (witness.fault() !== undefined) break;
    if (only && !only.has(index)) continue;
    script.push(`${time.now() - MORNING} ms: ${happening.what}`);
    happening.act({ devices, servers, witness });
    witness.judgeReceipts();
  }
  if (witness.fault() === undefined) {
    script.push(`${time.now() - MORNING} ms: everything is repaired`);
    repair(devices, servers);
    await run(time.now() + STRAY_MS);
    startAfresh(devices);
    const latest = time.now() + QUIET_MS;
    while (!witness.isQuiet() && time.now() < latest && witness.fault() === undefined) await run(time.now() + 1000);
    witness.judgeQuiet();
  }
  const records = devices[0]?.running()?.ledger.size ?? 0;
  for (const device of devices) device.die();
  for (const server of servers) server.kill();
  return { seed, fault: witness.fault(), script, ...(only && { only }), events, records };
}

/** One server; in a third of the seeds two or three, in a chain or as a star, the home server first. */
function createServers(
  seed: number,
  time: VirtualTime,
  devices: readonly SimulatedDevice[],
  mutation: Mutation | undefined,
): readonly SimulatedServer[] {
  const chance = chanceOf(seed, 2);
  const count = seed % 3 === 0 ? chance.whole(2, 3) : 1;
  const isChain = chance.happens(0.5);
  const servers: SimulatedServer[] = [];
  for (let index = 0; index < count; index += 1) {
    const above = isChain ? servers.at(-1) : servers[0];
    const way = { time, chance: chanceOf(seed, 30 + index), mutation };
    const server: SimulatedServer = createSimulatedServer({
      name: `server-${index}`,
      time,
      chance: chanceOf(seed, 10 + index),
      mutation,
      ...(above && { network: createSimulatedNetwork({ ...way, server: above }) }),
      onKilled: () => {
        for (const { network } of [...devices, ...servers]) if (network?.server() === server) network.dropAll();
      },
    });
    servers.push(server);
  }
  return servers;
}

function describeCast(devices: readonly SimulatedDevice[], servers: readonly SimulatedServer[]): string {
  const places = devices.map(
    ({ name, isOld, network }) => `${name}${isOld ? " (old)" : ""} at ${network.server().name}`,
  );
  const links = servers.flatMap(({ name, network }) => (network ? [`${name} below ${network.server().name}`] : []));
  return [...links, ...places].join(", ");
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

/** From now on nothing fails. */
function repair(devices: readonly SimulatedDevice[], servers: readonly SimulatedServer[]): void {
  for (const server of servers) {
    server.calm();
    server.network?.setTrouble(0, false);
    server.network?.setState("up");
  }
  for (const device of devices) {
    device.disk.setFull(false);
    device.network.setTrouble(0, false);
    device.network.setState("up");
  }
}

/**
 * Only a device that is off, of which another tab has kept something, or that was sent away for what it seemed to say:
 * all others have to come right by themselves.
 */
function startAfresh(devices: readonly SimulatedDevice[]): void {
  for (const device of devices) {
    if (device.running() && !device.disk.hasOtherTab() && !device.network.wasSentAway()) continue;
    device.network.dropAll();
    device.die();
    device.start();
  }
}
