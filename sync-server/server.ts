import { createServer, type IncomingMessage, type Server } from "node:http";
import type { Duplex } from "node:stream";
import { type WebSocket, WebSocketServer } from "ws";
import { closeCode } from "#core/protocol/close-code.ts";
import { maximumMessageBytes, syncPath } from "#core/protocol/limits.ts";
import { protocolVersion } from "#core/protocol/protocol-version.ts";
import { type ByteRate, createByteBudget, defaultByteRate } from "./byte-budget.ts";
import { measureCommits } from "./commit-meter.ts";
import { connect } from "./connection.ts";
import { documentNameInPath } from "./document-path.ts";
import type { Guard } from "./guard.ts";
import { defaultHeartbeat, type HeartbeatTimes, startHeartbeat } from "./heartbeat.ts";
import type { Logger } from "./logging.ts";
import { isFromThisMachine } from "./loopback.ts";
import { perMessageDeflate } from "./message-compression.ts";
import { writeMetrics } from "./metrics.ts";
import { createRooms } from "./rooms.ts";
import { defaultSnapshotLimits, type SnapshotLimits } from "./snapshot/snapshot-keeper.ts";
import { serveFolder } from "./static-files.ts";
import type { UpdateStore } from "./store/update-store.ts";
import { systemTimers } from "./system-timers.ts";
import type { Silence } from "./upstream/document-link.ts";
import { createServerId, purposeInUrl } from "./upstream/socket-purpose.ts";
import { createUpstream, maximumCatchUps, type Upstream } from "./upstream/upstream.ts";
import type { UpstreamPort } from "./upstream/upstream-port.ts";
import { answerRequests } from "./web.ts";

export type ServerOptions = {
  /** Name or address to listen on. */
  readonly host: string;
  /** Port to listen on; 0 takes a free one. */
  readonly port: number;
  /** The durable log. It belongs to the caller, who closes it after the server. */
  readonly store: UpdateStore;
  /** Judges each update before it touches a document. */
  readonly guard: Guard;
  /** Whether a document of this name may exist. */
  readonly isDocumentName: (name: string) => boolean;
  readonly logger: Logger;
  /** Folder with the built client. */
  readonly clientFolder: string;
  readonly heartbeat?: HeartbeatTimes;
  /** Sockets at one time; the next is told to come back later. */
  readonly maximumConnections?: number;
  /** What each socket may send. */
  readonly byteRate?: ByteRate;
  /** Documents open at one time; a device for another one is told to come back later. */
  readonly maximumDocuments?: number;
  /** When the log of a document is put together. */
  readonly snapshotLimits?: SnapshotLimits;
  /** How long a graceful stop waits for sockets to say goodbye, in milliseconds. */
  readonly goodbyeMs?: number;
  /** The server to keep equal with; this one works alone when left out. */
  readonly upstream?: { readonly port: UpstreamPort; readonly listEveryMs?: number; readonly silence?: Silence };
};

export type RunningServer = {
  readonly port: number;
  /** Commits what has arrived, says goodbye to every socket and stops listening. A second call waits for the first. */
  close(): Promise<void>;
};

/** Starts serving. Rejects with the system's error when it cannot listen (for example code EADDRINUSE). */
export async function startServer(options: ServerOptions): Promise<RunningServer> {
  const { guard, logger, isDocumentName, maximumConnections = 512, goodbyeMs = 1000 } = options;
  const { byteRate = defaultByteRate, maximumDocuments = 256 } = options;
  const now = () => performance.now();
  let upstream: Upstream | undefined;
  const { store: measured, report } = measureCommits(options.store, now);
  const store: UpdateStore = {
    ...measured,
    append(entries) {
      measured.append(entries);
      upstream?.wrote(new Set(entries.map(({ document }) => document)));
    },
  };
  const rooms = createRooms({
    store,
    guard,
    logger,
    schedule: (flush) => setImmediate(flush),
    // What is opened to catch up with the upstream is on no device's account.
    maximumDocuments: maximumDocuments + (options.upstream === undefined ? 0 : maximumCatchUps),
    snapshots: { limits: options.snapshotLimits ?? defaultSnapshotLimits, now, after },
  });
  const sockets = new WebSocketServer({ noServer: true, maxPayload: maximumMessageBytes, perMessageDeflate });
  const http = createServer(
    answerRequests({
      files: serveFolder(options.clientFolder),
      logger,
      metrics: () => {
        const facts = { connections: sockets.clients.size, logBytes: store.sizeBytes(), commits: report() };
        return writeMetrics({ ...rooms.status, ...facts, logRows: rowsIn(store), upstream: upstream?.status });
      },
      health: () => {
        const { documents, refusedUpdates, isStoring } = rooms.status;
        const status = isStoring ? "ok" : "not storing";
        const connections = sockets.clients.size;
        const tie = upstream?.status ?? null;
        return { status, protocolVersion, connections, documents, refusedUpdates, upstream: tie };
      },
      documents: () => ({ documents: [...store.positions()].map(([name, position]) => ({ name, position })) }),
    }),
  );
  try {
    await listen(http, options.port, options.host);
  } catch (error) {
    // The log is about to be closed.
    rooms.stop();
    throw error;
  }
  if (options.upstream !== undefined) {
    upstream = createUpstream({
      ...options.upstream,
      id: createServerId(Math.random),
      rooms,
      store,
      guard,
      isDocumentName,
      createBudget: () => createByteBudget(byteRate, now),
      timers: systemTimers,
      random: Math.random,
      logger,
    });
  }
  const heartbeat = startHeartbeat(options.heartbeat ?? defaultHeartbeat, now);

  function welcome(socket: WebSocket, stream: Duplex, requestUrl: string | undefined): void {
    const document = documentNameInPath(requestUrl);
    if (document === undefined || !isDocumentName(document)) {
      turnAway(socket, closeCode.unknownDocument, "There is no such document.");
    } else if (sockets.clients.size > maximumConnections) {
      turnAway(socket, closeCode.overloaded, "Too many devices are connected.");
    } else {
      const left = upstream?.arrived(document, purposeInUrl(requestUrl));
      if (left !== undefined) socket.once("close", left);
      connect({ socket, stream, document, rooms, heartbeat, budget: createByteBudget(byteRate, now), logger });
    }
  }

  http.on("upgrade", (request: IncomingMessage, stream: Duplex, head: Buffer) => {
    stream.on("error", (error) => logger.info("socket failed", { reason: error.message }));
    if (!isFromThisMachine(request.headers.host, request.headers.origin)) {
      refuseUpgrade(stream, "403 Forbidden");
    } else if (!request.url?.startsWith(syncPath)) {
      refuseUpgrade(stream, "404 Not Found");
    } else {
      sockets.handleUpgrade(request, stream, head, (socket) => welcome(socket, stream, request.url));
    }
  });
  http.on("clientError", (_error, stream) => refuseUpgrade(stream, "400 Bad Request"));

  async function stop(): Promise<void> {
    rooms.flush();
    upstream?.close();
    heartbeat.stop();
    const closed = new Promise<void>((resolve) => http.close(() => resolve()));
    for (const socket of sockets.clients) socket.close(closeCode.goingAway, "The server stops.");
    const impatience = setTimeout(() => {
      for (const socket of sockets.clients) socket.terminate();
      http.closeAllConnections();
    }, goodbyeMs);
    http.closeIdleConnections();
    await closed;
    clearTimeout(impatience);
    rooms.flush();
    rooms.stop();
  }

  let stopping: Promise<void> | undefined;
  return {
    port: portOf(http),
    close() {
      stopping ??= stop();
      return stopping;
    },
  };
}

function rowsIn(store: UpdateStore): number {
  return store.documents().reduce((rows, document) => rows + store.extent(document).rows, 0);
}

/** What waits for its time keeps no process alive. */
function after(ms: number, act: () => void): () => void {
  const timer = setTimeout(act, ms).unref();
  return () => clearTimeout(timer);
}

function listen(http: Server, port: number, host: string): Promise<void> {
  return new Promise((resolve, reject) => {
    http.once("error", reject);
    http.listen(port, host, () => {
      http.off("error", reject);
      resolve();
    });
  });
}

function portOf(http: Server): number {
  const address = http.address();
  if (address === null || typeof address === "string") throw new Error("The server listens on no port.");
  return address.port;
}

function turnAway(socket: WebSocket, code: number, reason: string): void {
  socket.on("error", () => socket.terminate());
  socket.close(code, reason);
}

function refuseUpgrade(stream: Duplex, status: string): void {
  if (stream.writable) {
    stream.end(`HTTP/1.1 ${status}\r\nconnection: close\r\ncontent-length: 0\r\n\r\n`, () => stream.destroy());
  } else {
    stream.destroy();
  }
}
