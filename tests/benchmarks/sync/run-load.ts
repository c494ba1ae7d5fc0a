/** One load on one server: opens the sockets, sends what was planned, and tells how long it took to reach another device. */
import { setTimeout as wait } from "node:timers/promises";
import { type LoadDocument, openLoadDocument, type Sender } from "./load-document.ts";
import type { PlannedDocument } from "./load-plan.ts";
import type { MeasuredServer } from "./servers.ts";

/**
 * How fast the sockets send: each keeps `depth` updates on their way until they have reached another device; or all
 * together send `updates` every `everyMs`.
 */
export type Pace = { readonly depth: number } | { readonly updates: number; readonly everyMs: number };

export type LoadResult = {
  /** Updates that reached another device, a second; where the server acknowledges, also acknowledged to their sender. */
  readonly updatesPerSecond: number;
  /** ms from sending an update to its arrival at another device, ascending. */
  readonly latencies: readonly number[];
  /** Processor time of the server for one update, ms; undefined where the system does not tell. */
  readonly cpuMs: number | undefined;
  /** Messages that the server sent for one update. */
  readonly messagesPerUpdate: number;
};

const PATIENCE_MS = 120_000;

/**
 * @param acknowledges whether the server tells what its log holds
 * @throws when the server refuses or loses something, closes a socket, or takes longer than two minutes
 */
export async function runLoad(
  server: MeasuredServer,
  plan: readonly PlannedDocument[],
  pace: Pace,
  acknowledges: boolean,
): Promise<LoadResult> {
  let fault: Error | undefined;
  const onFault = (error: Error): void => {
    fault ??= error;
  };
  const until = async (what: string, condition: () => boolean): Promise<void> => {
    const limit = performance.now() + PATIENCE_MS;
    while (!condition()) {
      if (fault !== undefined) throw fault;
      if (performance.now() > limit) throw new Error(`The load waited too long until ${what}.`);
      await wait(2);
    }
  };
  const latencies: number[] = [];
  const documents: LoadDocument[] = [];
  const send = (sender: Sender): void => {
    const frame = sender.frames[sender.sentAt.length];
    if (frame === undefined) return;
    sender.sentAt.push(performance.now());
    sender.socket.sendFrame(frame);
  };
  const onArrival = (sender: Sender, sentAt: number): void => {
    latencies.push(performance.now() - sentAt);
    if ("depth" in pace) send(sender);
  };
  try {
    for (const planned of plan) documents.push(await openLoadDocument(server.url, planned, { onArrival, onFault }));
    for (const document of documents) document.sendHistory();
    await until("the history has arrived", () => documents.every((document) => document.hasHistory()));

    const senders = documents.flatMap((document) => document.senders);
    const total = senders.reduce((sum, { frames }) => sum + frames.length, 0);
    const messagesIn = (): number => senders.reduce((sum, { socket }) => sum + socket.traffic.messages, 0);
    const before = { messages: messagesIn(), cpu: server.cpuSeconds() };
    const begun = performance.now();
    if ("depth" in pace) for (const sender of senders) for (let sent = 0; sent < pace.depth; sent += 1) send(sender);
    else await sendSteadily(senders, total, pace, send);
    await until("everything has arrived", () => latencies.length === total);
    if (acknowledges) await until("everything is acknowledged", () => documents.every((each) => each.isAcknowledged()));
    const seconds = (performance.now() - begun) / 1000;
    await until("everybody has everything", () => documents.every((document) => document.isEverywhere()));
    const cpu = server.cpuSeconds();
    return {
      updatesPerSecond: total / seconds,
      latencies: latencies.sort((a, b) => a - b),
      cpuMs: cpu === undefined || before.cpu === undefined ? undefined : ((cpu - before.cpu) * 1000) / total,
      messagesPerUpdate: (messagesIn() - before.messages) / total,
    };
  } finally {
    await Promise.all(documents.map((document) => document.close()));
  }
}

async function sendSteadily(
  senders: readonly Sender[],
  total: number,
  pace: { readonly updates: number; readonly everyMs: number },
  send: (sender: Sender) => void,
): Promise<void> {
  const begun = performance.now();
  for (let sent = 0; sent < total; ) {
    const due = Math.min(total, Math.ceil((performance.now() - begun) / pace.everyMs) * pace.updates);
    for (; sent < due; sent += 1) {
      const sender = senders[sent % senders.length];
      if (sender) send(sender);
    }
    await wait(pace.everyMs);
  }
}
