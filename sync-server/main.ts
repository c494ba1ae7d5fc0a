import { parseDocumentName } from "#core/ledger/documents.ts";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import { createLogger, reasonOf } from "./logging.ts";
import { type CommandLine, helpText, parseCommandLine } from "./options.ts";
import { type RunningServer, startServer } from "./server.ts";
import { defaultSnapshotLimits } from "./snapshot/snapshot-keeper.ts";
import { openSqliteStore } from "./store/sqlite-store.ts";
import { StoreProblem } from "./store/store-problem.ts";
import type { UpdateStore } from "./store/update-store.ts";
import { reachUpstream } from "./upstream/reach-upstream.ts";

/** Composition root: puts the real clock, disk, guard and sockets together and runs until it is told to stop. */
async function main(): Promise<void> {
  const parsed = parseCommandLine(process.argv.slice(2));
  if (parsed.state === "help") {
    process.stdout.write(helpText);
  } else if (parsed.state === "refused") {
    process.stderr.write(`${parsed.sentence}\n`);
    process.exitCode = 2;
  } else {
    await run(parsed.options);
  }
}

async function run(options: CommandLine): Promise<void> {
  const logger = createLogger(options.logLevel, (line) => process.stderr.write(`${line}\n`));
  let store: UpdateStore | undefined;
  let server: RunningServer;
  try {
    store = openSqliteStore(options.dataFolder);
    server = await startServer({
      host: options.host,
      port: options.port,
      clientFolder: options.clientFolder,
      store,
      logger,
      guard: (update, document, maximumBytes) => inspectUpdate(update, document, { maximumBytes }),
      snapshotLimits: { ...defaultSnapshotLimits, rows: options.snapshotRows },
      isDocumentName: (name) => parseDocumentName(name) !== undefined,
      ...(options.upstream && { upstream: { port: reachUpstream(options.upstream) } }),
    });
  } catch (error) {
    store?.close();
    process.stderr.write(`${startProblem(error, options)}\n`);
    process.exitCode = 1;
    return;
  }
  stopOnSignal(server, store);
  const host = options.host.includes(":") ? `[${options.host}]` : options.host;
  process.stdout.write(`Pitslate is at http://${host}:${server.port}\n`);
}

function stopOnSignal(server: RunningServer, store: UpdateStore): void {
  const stop = async (): Promise<void> => {
    await server.close();
    store.close();
  };
  for (const signal of ["SIGINT", "SIGTERM"] as const) {
    process.once(signal, () => {
      stop().catch((error: unknown) => {
        process.stderr.write(`The server did not stop cleanly: ${reasonOf(error)}\n`);
        process.exitCode = 1;
      });
    });
  }
}

function startProblem(error: unknown, { host, port }: CommandLine): string {
  if (error instanceof StoreProblem) return error.message;
  const code = error instanceof Error && "code" in error ? error.code : undefined;
  if (code === "EADDRINUSE") return `Port ${port} on ${host} is in use by another program; choose one with --port.`;
  if (code === "EACCES") return `Port ${port} on ${host} may not be used by this user; choose one with --port.`;
  return `The server cannot start: ${reasonOf(error)}.`;
}

await main();
