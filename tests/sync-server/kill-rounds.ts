import { mkdirSync, rmSync } from "node:fs";
import { join } from "node:path";
import * as Y from "yjs";
import { type Chance, createChance } from "#tests/simulation/chance.ts";
import { keepPromises, type PromiseKeeper, type Promises } from "./promise-keeper.ts";
import { countOf, lostIn, recordOf, snapshotsIn } from "./promised-records.ts";
import { type ServerProcess, spawnServer } from "./spawn-server.ts";

export type KillRounds = {
  /** The server's program, as Node's arguments. */
  readonly program: readonly string[];
  /** An empty folder for the logs. */
  readonly folder: string;
  readonly rounds: number;
  readonly seed: number;
  /** So many servers at a time, each with a log of its own. */
  readonly lanes: number;
  /** Called after each round. */
  readonly progress?: (done: number) => void;
  /** Ends it after the rounds that are under way; what was promised until then is looked for. */
  readonly signal?: AbortSignal;
};

export type KillReport = {
  readonly rounds: number;
  /** Records that the server had acknowledged or passed on, over all rounds. */
  readonly promised: number;
  /** Documents that had a snapshot at the end. */
  readonly snapshots: number;
  /** Kills after which the log held parts of a snapshot that had not been adopted. */
  readonly amidSnapshot: number;
  /** One sentence for each promise that was not kept; empty is good. */
  readonly broken: readonly string[];
};

const writers = 3;
/** A writer waits for a promise after so many updates; so there is always something on its way when the server dies. */
const burst = 3;
/** A new document begins after so many rounds, so that the time of a round does not grow with their number. */
const roundsPerDocument = 10;
/** A new log begins after so many rounds, when the one before has been compared with all that was promised of it. */
const roundsPerLog = 50;
const mostPromisesBeforeKill = 60;
/** Low, so that the server takes a snapshot several times in a round, under load. */
const snapshotRows = 3;
const patienceMs = 30_000;

/**
 * Starts the server, writes from several sockets, kills it in the middle, and so on in one folder. Then every document is
 * read from the log and compared with all that was ever promised, and the next log begins.
 * A killed process leaves its written bytes to the system, so this proves the order of write and promise, that a torn
 * transaction is rolled back, and that a snapshot stands whole or not at all; that the bytes were flushed only a loss of
 * power would show.
 */
export async function killAgainAndAgain(options: KillRounds): Promise<KillReport> {
  const { rounds, seed, lanes, progress, signal } = options;
  const total = { rounds: 0, promised: 0, snapshots: 0, amidSnapshot: 0, broken: [] as string[] };
  const logs = Math.ceil(rounds / roundsPerLog);
  let begun = 0;

  async function runLane(): Promise<void> {
    while (begun < logs && !signal?.aborted) {
      const log = begun;
      begun += 1;
      const count = Math.min(roundsPerLog, rounds - log * roundsPerLog);
      const folder = join(options.folder, `log-${log}`);
      mkdirSync(folder);
      const report = await killOneLog({ ...options, folder, rounds: count, seed: seed * 1_000_003 + log }, () => {
        total.rounds += 1;
        progress?.(total.rounds);
      });
      total.promised += report.promised;
      total.snapshots += report.snapshots;
      total.amidSnapshot += report.amidSnapshot;
      total.broken.push(...report.broken.map((sentence) => `Log ${log}: ${sentence}`));
      if (report.broken.length === 0) rmSync(folder, { recursive: true, force: true });
    }
  }

  await Promise.all(Array.from({ length: lanes }, runLane));
  return total;
}

async function killOneLog(
  { program, folder, rounds, seed, signal }: KillRounds,
  onRound: () => void,
): Promise<Omit<KillReport, "rounds">> {
  const chance = createChance(seed);
  const promisesByDocument = new Map<string, Promises>();
  const broken: string[] = [];
  let amidSnapshot = 0;
  const args = ["--port", "0", "--data", folder, "--log-level", "silent", "--snapshot-rows", String(snapshotRows)];
  for (let round = 0; round < rounds && !signal?.aborted; round++) {
    const document = `rider/r${Math.floor(round / roundsPerDocument)}/2031`;
    const promises = promisesByDocument.get(document) ?? new Map<number, number>();
    promisesByDocument.set(document, promises);
    const before = countOf(promises);
    const firstClient = 1 + round * writers;
    await killOnce(spawnServer([...program, ...args]), { document, promises, firstClient, chance, signal });
    // An interruption reaches the server too, which may then end before it began.
    if (signal?.aborted) break;
    if (countOf(promises) === before) broken.push(`Round ${round} ended before anything was promised.`);
    if (snapshotsIn(folder).isDraftLeft) amidSnapshot += 1;
    onRound();
  }
  broken.push(...lostIn(folder, promisesByDocument));
  const promised = [...promisesByDocument.values()].reduce((sum, promises) => sum + countOf(promises), 0);
  return { promised, snapshots: snapshotsIn(folder).snapshots, amidSnapshot, broken };
}

type Round = {
  readonly document: string;
  readonly promises: Promises;
  readonly firstClient: number;
  readonly chance: Chance;
  readonly signal: AbortSignal | undefined;
};

async function killOnce(server: ServerProcess, round: Round): Promise<void> {
  const { document, promises, firstClient, chance, signal } = round;
  const kill = () => server.child.kill("SIGKILL");
  const watchdog = setTimeout(kill, patienceMs);
  try {
    const url = `ws://${await server.listening}/sync/${document}`;
    const watcher = await keepPromises(url, promises);
    const sockets = await Promise.all(Array.from({ length: writers }, () => keepPromises(url, promises)));
    const writing = sockets.map((socket, index) => writeUntilClosed(socket, firstClient + index));
    for (let left = chance.whole(1, mostPromisesBeforeKill); left > 0; left--) await watcher.nextPromise();
    kill();
    await Promise.all([...writing, ...[watcher, ...sockets].map(({ closed }) => closed)]);
  } catch (error) {
    if (!signal?.aborted) throw error;
  } finally {
    clearTimeout(watchdog);
    kill();
    await server.finished;
  }
}

async function writeUntilClosed(socket: PromiseKeeper, clientId: number): Promise<void> {
  const document = new Y.Doc();
  document.clientID = clientId;
  let isOpen = true;
  document.on("update", (update: Uint8Array) => socket.send(update));
  for (let n = 1; isOpen; n++) {
    document.getArray("records").push([recordOf(clientId, n)]);
    if (n % burst === 0) isOpen = await socket.nextPromise();
  }
}
