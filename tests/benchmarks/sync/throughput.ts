/** Durable throughput at 100 sockets, beside the server that y-websocket 1.5 carried, on the same bytes. */
import { join } from "node:path";
import { line } from "../measure.ts";
import { type LoadSize, planLoad } from "./load-plan.ts";
import { type LoadResult, type Pace, runLoad } from "./run-load.ts";
import { hasLevelDb, type MeasuredServer, startOurs, startYWebsocket } from "./servers.ts";

const SEED = 4;
/** On a busy machine the repetitions end after so long, but not before there are enough for a median. */
const MOST_REPETITIONS = 9;
const FEWEST_REPETITIONS = 5;
const LONGEST_MS = 80_000;
/** LevelDB has no bound to keep. */
const LEVEL_DB_REPETITIONS = 3;
const full: LoadSize = {
  documents: 10,
  sendersPerDocument: 10,
  updatesPerSender: 150,
  earlierWriters: 20,
  recordsPerEarlierWriter: 50,
};
/** Every socket keeps so many updates on their way. */
const DEPTH = 4;
/** Before the clock runs, so that both servers are measured as they run for the rest of the day. */
const warmUp: LoadSize = { ...full, updatesPerSender: 50 };
const calm: LoadSize = { ...full, updatesPerSender: 20 };
/** 500 updates a second: a few times what a team of forty writes in its busiest minute. */
const CALM_PACE: Pace = { updates: 10, everyMs: 20 };

type Contestant = {
  readonly name: string;
  readonly acknowledges: boolean;
  readonly start: (folder: string) => Promise<MeasuredServer>;
};

/** Prints the report; true when the bound is kept. @param script our server as one file @param folder on a real disk */
export async function benchThroughput(script: string, folder: string, write: (text: string) => void): Promise<boolean> {
  const ours: Contestant = { name: "ours, fsync", acknowledges: true, start: (data) => startOurs(script, data) };
  const plain: Contestant = { name: "y-websocket 1.5, memory", acknowledges: false, start: () => startYWebsocket() };
  const withLevel: Contestant = { name: "y-websocket 1.5, LevelDB", acknowledges: false, start: startYWebsocket };
  const contestants = [ours, plain, ...(hasLevelDb() ? [withLevel] : [])];
  const loads = planLoad("busy", full, SEED);
  const warmUpLoads = planLoad("warm-up", warmUp, SEED);
  const calmLoads = planLoad("calm", calm, SEED);
  const sockets = full.documents * full.sendersPerDocument;
  write(
    `\nThroughput: ${sockets} sockets in ${full.documents} documents, ${sockets * full.updatesPerSender} updates of one record, ` +
      `${DEPTH} on their way for each socket, after a warm-up, up to ${MOST_REPETITIONS} repetitions in turn\n`,
  );
  if (!hasLevelDb()) write("LevelDB is not installed on this machine: its column is left out.\n");
  const results = new Map(contestants.map((each) => [each, { busy: [] as LoadResult[], calm: [] as LoadResult[] }]));
  const begun = performance.now();
  const isOver = (done: number): boolean =>
    done >= MOST_REPETITIONS || (done >= FEWEST_REPETITIONS && performance.now() - begun > LONGEST_MS);
  for (let repetition = 0; !isOver(repetition); repetition += 1) {
    for (const [index, contestant] of contestants.entries()) {
      if (contestant === withLevel && repetition >= LEVEL_DB_REPETITIONS) continue;
      const server = await contestant.start(join(folder, `throughput-${repetition}-${index}`));
      try {
        await runLoad(server, warmUpLoads, { depth: DEPTH }, contestant.acknowledges);
        results.get(contestant)?.busy.push(await runLoad(server, loads, { depth: DEPTH }, contestant.acknowledges));
      } finally {
        await server.stop();
      }
    }
  }
  for (const [index, contestant] of contestants.entries()) {
    const server = await contestant.start(join(folder, `calm-${index}`));
    try {
      await runLoad(server, warmUpLoads, { depth: DEPTH }, contestant.acknowledges);
      results.get(contestant)?.calm.push(await runLoad(server, calmLoads, CALM_PACE, contestant.acknowledges));
    } finally {
      await server.stop();
    }
  }
  for (const [{ name }, { busy, calm: steady }] of results) {
    write(line(`${name}: updates a second at another device`, spread(busy.map((result) => result.updatesPerSecond))));
    write(line("  latency to the other device under that load", latency(busy.flatMap((result) => result.latencies))));
    write(line("  the same at 500 updates a second", latency(steady.flatMap((result) => result.latencies))));
    const cpu = busy.flatMap((result) => result.cpuMs ?? []);
    if (cpu.length > 0)
      write(line("  processor time of the server for one update", `${(median(cpu) * 1000).toFixed(0)} µs`));
    write(line("  messages sent for one update", median(busy.map((result) => result.messagesPerUpdate)).toFixed(1)));
  }
  const ratioTo = (other: Contestant): readonly number[] =>
    (results.get(other)?.busy ?? []).map(
      (result, index) => (results.get(ours)?.busy[index]?.updatesPerSecond ?? Number.NaN) / result.updatesPerSecond,
    );
  const ratio = median(ratioTo(plain));
  write(
    line("ours with fsync over y-websocket 1.5 in memory", spread(ratioTo(plain), 2), {
      text: "at least 1",
      kept: ratio >= 1,
    }),
  );
  if (contestants.includes(withLevel)) {
    write(line("ours with fsync over y-websocket 1.5 with LevelDB", spread(ratioTo(withLevel), 2)));
  }
  return ratio >= 1;
}

function median(values: readonly number[]): number {
  const sorted = [...values].sort((a, b) => a - b);
  return sorted[Math.floor(sorted.length / 2)] ?? Number.NaN;
}

function spread(values: readonly number[], digits = 0): string {
  const text = (value: number): string => value.toFixed(digits);
  return `${text(median(values))} (${text(Math.min(...values))} to ${text(Math.max(...values))})`;
}

function latency(values: readonly number[]): string {
  const sorted = [...values].sort((a, b) => a - b);
  const at = (part: number): string => (sorted[Math.floor(part * (sorted.length - 1))] ?? Number.NaN).toFixed(1);
  return `p50 ${at(0.5)} ms, p99 ${at(0.99)} ms`;
}
