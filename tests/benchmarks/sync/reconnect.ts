/** A device comes back after an hour without network and 500 records of its own: round trips, and bytes on the wire. */
import { join } from "node:path";
import { setTimeout as wait } from "node:timers/promises";
import { deflateSync } from "node:zlib";

import { type LedgerRecord, splitSubject } from "#core/ledger/record.ts";
import { allKinds } from "#core/planning/all-kinds.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import { weekendKind } from "#core/weekend/record-kinds.ts";
import { createChance } from "#tests/simulation/chance.ts";
import { line } from "../measure.ts";
import { type BenchDevice, openBenchDevice } from "./bench-device.ts";
import { type DelayingProxy, openDelayingProxy } from "./delaying-proxy.ts";
import { createRiderHistory } from "./rider-history.ts";
import { startOurs } from "./servers.ts";

const SEED = 5;
const RECORDS = 500;
const EARLIER_RECORDS = 400;
/** One way; long beside the work of the processors on a busy machine, which counts too. */
const DELAY_MS = 250;
const REPETITIONS = 3;
const PATIENCE_MS = 30_000;
const HOUR_MS = 3_600_000;
const MOST_ROUND_TRIPS = 1.5;
const MOST_BYTES = 1.5;
/** Records of several riders go into several documents, each with a handshake and a compression of its own: shown, not judged. */
const JUDGED_RIDERS = 1;
const START = Date.UTC(2031, 4, 3, 9);

type Return = {
  readonly sockets: number;
  readonly roundTrips: number;
  readonly up: number;
  readonly down: number;
  /** The JSON lines of the new records, deflated. */
  readonly deflated: number;
};

/** Prints the report; true when the bounds are kept. @param script our server as one file @param folder on a real disk */
export async function benchReconnect(script: string, folder: string, write: (text: string) => void): Promise<boolean> {
  write(
    `\nComing back after an hour with ${RECORDS} own records, ${DELAY_MS} ms each way, ${REPETITIONS} repetitions\n`,
  );
  let allKept = true;
  for (const riders of [JUDGED_RIDERS, 12]) {
    const returns: Return[] = [];
    for (let repetition = 0; repetition < REPETITIONS; repetition += 1) {
      returns.push(await comeBack(script, join(folder, `reconnect-${riders}-${repetition}`), riders));
    }
    // What a busy machine takes longer is no round trip, and it only ever adds.
    const roundTrips = Math.min(...returns.map((each) => each.roundTrips));
    const bytes = median(returns.map(({ up, down, deflated }) => (up + down) / deflated));
    const [first] = returns;
    write(line(`records of ${riders} ${riders === 1 ? "rider" : "riders"}: sockets`, String(first?.sockets)));
    write(
      line("  fewest round trips from the first open socket until all is everywhere", roundTrips.toFixed(2), {
        text: `at most ${MOST_ROUND_TRIPS}`,
        kept: roundTrips <= MOST_ROUND_TRIPS,
      }),
    );
    write(
      line(
        "  bytes to the server and back, TCP's own not counted",
        `${first?.up} + ${first?.down}; the records deflated ${first?.deflated}`,
      ),
    );
    const bytesKept = bytes <= MOST_BYTES;
    const bound = riders === JUDGED_RIDERS ? { text: `at most ${MOST_BYTES}`, kept: bytesKept } : undefined;
    write(line("  bytes over deflated records", bytes.toFixed(2), bound));
    if (bound === undefined && !bytesKept) {
      write(
        `  (above ${MOST_BYTES}, and not judged: ${first?.sockets} handshakes, and each document is deflated by itself)\n`,
      );
    }
    allKept &&= roundTrips <= MOST_ROUND_TRIPS && (bytesKept || bound === undefined);
  }
  return allKept;
}

async function comeBack(script: string, folder: string, riders: number): Promise<Return> {
  const server = await startOurs(script, folder);
  const serverPort = Number(new URL(server.url).port);
  const proxy = await openDelayingProxy(serverPort, DELAY_MS);
  const chance = createChance(SEED);
  const laptop = openBenchDevice({ id: "pit-laptop", port: serverPort, clock: START, chance });
  const phone = openBenchDevice({ id: "phone", port: proxy.port, clock: START, chance });
  try {
    return await playHour(laptop, phone, proxy, riders);
  } finally {
    for (const { team } of [phone, laptop]) team.close();
    await proxy.close();
    await server.stop();
  }
}

async function playHour(
  laptop: BenchDevice,
  phone: BenchDevice,
  proxy: DelayingProxy,
  riders: number,
): Promise<Return> {
  const names = Array.from({ length: riders }, (_, index) => `rider-${index}`);
  const histories = names.map((name, index) => createRiderHistory(name, createChance(SEED + index)));
  const records = (from: number, count: number): readonly LedgerRecord[] =>
    histories.flatMap((history, index) => {
      const share = Math.floor((count * (index + 1)) / riders) - Math.floor((count * index) / riders);
      const runs = Math.floor(share / 4);
      return history.write(from, runs, share - runs);
    });
  const both = [laptop, phone];
  const isEverywhere = (): boolean =>
    both.every(({ team }) => team.isLoaded() && team.status().state === "on the server") &&
    laptop.team.ledger.size === phone.team.ledger.size;

  await until("the laptop has loaded", () => laptop.team.isLoaded());
  laptop.team.writerFor("kim-larch").setMany([
    { kind: weekendKind, key: "kestrel", value: { name: "Kestrel", venue: "ridge", startsOn: "2031-05-03" } },
    ...names.map((name) => ({
      kind: riderKind,
      key: name,
      value: { name, mass: { value: 80, unit: "kg" }, bike: `${name}-1` },
    })),
  ]);
  for (const { team } of both) team.showRiders("all");
  await until("both know the riders", isEverywhere);
  enter(laptop, records(START - HOUR_MS, EARLIER_RECORDS));
  await until("both have what was before", isEverywhere);

  proxy.cut();
  await until("the phone is offline", () => phone.team.status().state === "offline");
  const sizeBefore = phone.team.ledger.size;
  const written = enter(phone, records(START, RECORDS));
  if (phone.team.ledger.size - sizeBefore !== RECORDS) throw new Error("The phone did not write what it should.");
  phone.setClock(START + HOUR_MS);
  await until("the phone has kept them", () => phone.team.status().state === "offline");

  proxy.restore();
  phone.forgetSockets();
  phone.team.wake();
  await until("all is everywhere", () => phone.sockets().firstOpened !== undefined && isEverywhere());
  const { firstOpened = Number.NaN, opened } = phone.sockets();
  const roundTrips = (performance.now() - firstOpened) / (2 * DELAY_MS);
  // What was under way, as receipts are, is counted too.
  await wait(4 * DELAY_MS);
  const lines = written.map((record) => `${JSON.stringify(record)}\n`).join("");
  return { sockets: opened, roundTrips, ...proxy.bytes, deflated: deflateSync(lines).length };
}

/** Writes through the device's own writer, batch by batch, with its clock at the moment of each. @returns the records as written */
function enter({ team, setClock }: BenchDevice, planned: readonly LedgerRecord[]): readonly LedgerRecord[] {
  const written: LedgerRecord[] = [];
  for (let begin = 0; begin < planned.length; ) {
    const first = planned[begin];
    let end = begin + 1;
    while (first?.batch !== undefined && planned[end]?.batch === first.batch) end += 1;
    const batch = planned.slice(begin, end);
    setClock(Date.parse(first?.at ?? ""));
    const entries = batch.map(({ subject, value, cause }) => {
      const { kind: name, key } = splitSubject(subject);
      const kind = allKinds.find((known) => known.kind === name);
      if (kind === undefined) throw new Error(`There is no kind "${name}".`);
      return { kind, key, value, ...(cause && { cause }) };
    });
    const result = team.writerFor(first?.by ?? "").setMany(entries, { force: true });
    if (!result.ok) throw new Error(`The device did not write: ${JSON.stringify(result.problem)}`);
    written.push(...result.records);
    begin = end;
  }
  return written;
}

async function until(what: string, condition: () => boolean): Promise<void> {
  const limit = performance.now() + PATIENCE_MS;
  while (!condition()) {
    if (performance.now() > limit) throw new Error(`Waited too long until ${what}.`);
    await wait(2);
  }
}

function median(values: readonly number[]): number {
  return [...values].sort((a, b) => a - b)[Math.floor(values.length / 2)] ?? Number.NaN;
}
