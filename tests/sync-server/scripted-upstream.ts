import { createServer, type ServerResponse } from "node:http";
import { onTestFinished } from "vitest";
import { type WebSocket, WebSocketServer } from "ws";

export type ScriptedUpstream = {
  readonly url: string;
  /** Addresses of the sockets that have come, in order. */
  readonly addresses: readonly string[];
};

export type Script = {
  /** Answers the question for the documents. */
  readonly list: (response: ServerResponse) => void;
  readonly onSocket?: (socket: WebSocket, number: number) => void;
};

/** An upstream that does only what the test says; it ends with the test. */
export async function scriptedUpstream({ list, onSocket = () => {} }: Script): Promise<ScriptedUpstream> {
  const addresses: string[] = [];
  const http = createServer((_request, response) => list(response));
  const sockets = new WebSocketServer({ server: http, maxPayload: 64 * 1024 * 1024 });
  sockets.on("connection", (socket, request) => {
    socket.on("error", () => {});
    onSocket(socket, addresses.push(request.url ?? ""));
  });
  await new Promise<void>((resolve) => http.listen(0, "127.0.0.1", resolve));
  onTestFinished(() => {
    for (const socket of sockets.clients) socket.terminate();
    http.closeAllConnections();
    http.close();
  });
  const address = http.address();
  if (address === null || typeof address === "string") throw new Error("The upstream has no port.");
  return { url: `127.0.0.1:${address.port}`, addresses };
}

/** Lists documents, each with position 1. */
export function listing(...names: readonly string[]): Script["list"] {
  return (response) => response.end(JSON.stringify({ documents: names.map((name) => ({ name, position: 1 })) }));
}
