import * as Y from "yjs";
import { openSqliteStore } from "#server/store/sqlite-store.ts";
import { type Chance, createChance } from "#tests/simulation/chance.ts";
import { keepPromises, type PromiseKeeper, type Promises } from "./promise-keeper.ts";
import { type ServerProcess, spawnServer } from "./spawn-server.ts";

export type KillRounds = {
  /** The server's program, as Node's arguments. */
  readonly program: readonly string[];
  /** An empty folder for the log. */
  readonly folder: string;
  readonly rounds: number;
  readonly seed: number;
  /** Called after each round. */
  readonly progress?: (done: number) => void;
};

export type KillReport = {
  /** Records that the server had acknowledged or passed on, over all rounds. */
  readonly promised: number;
  /** One sentence for each promise that was not kept; empty is good. */
  readonly broken: readonly string[];
};

const writers = 3;
/** A writer waits for a promise after so many updates; so there is always something on its way when the server dies. */
const burst = 3;
/** A new document begins after so many rounds, so that the time of a round does not grow with their number. */
const roundsPerDocument = 10;
const mostPromisesBeforeKill = 60;
const patienceMs = 30_000;

/**
 * Starts the server, writes from several sockets, kills it in the middle, and so on in one folder. After the last round
 * every document is read from the log and compared with all that was ever promised.
 * A killed process leaves its written bytes to the system, so this proves the order of write and promise, and that a torn
 * transaction is rolled back; that the bytes were flushed only a loss of power would show.
 */
export async function killAgainAndAgain({ program, folder, rounds, seed, progress }: KillRounds): Promise<KillReport> {
  const chance = createChance(seed);
  const promisesByDocument = new Map<string, Promises>();
  const broken: string[] = [];
  for (let round = 0; round < rounds; round++) {
    const document = `rider/r${Math.floor(round / roundsPerDocument)}/2031`;
    const promises = promisesByDocument.get(document) ?? new Map<number, number>();
    promisesByDocument.set(document, promises);
    const before = countOf(promises);
    await killOnce(spawnServer([...program, "--port", "0", "--data", folder, "--log-level", "silent"]), {
      document,
      promises,
      firstClient: 1 + round * writers,
      chance,
    });
    if (countOf(promises) === before) broken.push(`Round ${round} ended before anything was promised.`);
    progress?.(round + 1);
  }
  for (const [document, promises] of promisesByDocument) broken.push(...brokenIn(folder, document, promises));
  const promised = [...promisesByDocument.values()].reduce((sum, promises) => sum + countOf(promises), 0);
  return { promised, broken };
}

type Round = {
  readonly document: string;
  readonly promises: Promises;
  readonly firstClient: number;
  readonly chance: Chance;
};

async function killOnce(server: ServerProcess, { document, promises, firstClient, chance }: Round): Promise<void> {
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

/** One record is one step of its writer's clock, so a promise of a clock is a promise of so many records. */
function recordOf(clientId: number, n: number) {
  const id = `${clientId.toString().padStart(13, "0")}${n.toString().padStart(13, "0")}`;
  const written = { by: "anna", device: "phone", at: "2031-05-04T09:00:00Z" };
  return { version: 1, id, subject: "paper:one", value: { clientId, n }, supersedes: [], ...written };
}

function brokenIn(folder: string, document: string, promises: Promises): string[] {
  const store = openSqliteStore(folder);
  const held = new Y.Doc();
  try {
    for (const update of store.load(document)) Y.applyUpdate(held, update);
  } finally {
    store.close();
  }
  const records = new Set(
    held
      .getArray("records")
      .toArray()
      .map((record) => JSON.stringify(record)),
  );
  const broken: string[] = [];
  for (const [clientId, count] of promises) {
    for (let n = 1; n <= count; n++) {
      if (records.has(JSON.stringify(recordOf(clientId, n)))) continue;
      broken.push(`Record ${n} of writer ${clientId} in ${document} was promised and is gone.`);
    }
  }
  return broken;
}

function countOf(promises: Promises): number {
  return [...promises.values()].reduce((sum, count) => sum + count, 0);
}
