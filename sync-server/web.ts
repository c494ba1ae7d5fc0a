import type { IncomingMessage, RequestListener, ServerResponse } from "node:http";
import { type DocumentList, documentListPath } from "#core/protocol/document-list.ts";
import { type Logger, reasonOf } from "./logging.ts";
import { isFromThisMachine } from "./loopback.ts";
import { metricsType } from "./metrics.ts";
import { securityHeaders } from "./security-headers.ts";
import type { StaticFiles } from "./static-files.ts";
import type { UpstreamStatus } from "./upstream/upstream.ts";

export type Health = {
  readonly status: "ok" | "not storing";
  readonly protocolVersion: number;
  readonly connections: number;
  readonly documents: number;
  readonly refusedUpdates: number;
  /** Null when this server has no upstream. An upstream that is away is no fault of this server. */
  readonly upstream: UpstreamStatus | null;
};

type WebNeeds = {
  readonly files: StaticFiles;
  readonly health: () => Health;
  /** The numbers in Prometheus' text format. */
  readonly metrics: () => string;
  readonly documents: () => DocumentList;
  readonly logger: Logger;
};

/**
 * Answers plain requests: `/health` and `/documents` as JSON, `/metrics` as text for a collector, everything else from the
 * built client.
 */
export function answerRequests(needs: WebNeeds): RequestListener {
  return (request, response) => {
    answer(request, response, needs).catch((error: unknown) => {
      needs.logger.error("request failed", { reason: reasonOf(error) });
      response.destroy();
    });
  };
}

async function answer(
  request: IncomingMessage,
  response: ServerResponse,
  { files, health, metrics, documents }: WebNeeds,
): Promise<void> {
  const { host, origin } = request.headers;
  if (host === undefined || !isFromThisMachine(host, origin)) {
    sendText(response, 403, "This server answers this machine only.");
    return;
  }
  for (const [name, value] of Object.entries(securityHeaders(host))) response.setHeader(name, value);
  if (request.method !== "GET" && request.method !== "HEAD") {
    response.setHeader("allow", "GET, HEAD");
    sendText(response, 405, "Only GET and HEAD are answered.");
    return;
  }
  const url = request.url ?? "/";
  const [path] = url.split("?", 1);
  if (path === "/metrics") {
    send(response, 200, metrics(), metricsType, "no-store");
    return;
  }
  if (path === documentListPath) {
    sendJson(response, 200, documents());
    return;
  }
  if (path === "/health") {
    const report = health();
    sendJson(response, report.status === "ok" ? 200 : 503, report);
    return;
  }
  const file = await files(url);
  if (file.status === 200) send(response, 200, file.body, file.type, file.caching);
  else sendText(response, file.status, file.sentence);
}

function sendText(response: ServerResponse, status: number, sentence: string): void {
  send(response, status, `${sentence}\n`, "text/plain; charset=utf-8", "no-store");
}

function sendJson(response: ServerResponse, status: number, content: Health | DocumentList): void {
  send(response, status, JSON.stringify(content), "application/json; charset=utf-8", "no-store");
}

/** Node leaves the body out of an answer to HEAD by itself. */
function send(
  response: ServerResponse,
  status: number,
  body: string | Uint8Array,
  type: string,
  caching: string,
): void {
  response.writeHead(status, {
    "content-type": type,
    "content-length": typeof body === "string" ? Buffer.byteLength(body) : body.length,
    "cache-control": caching,
  });
  response.end(body);
}
