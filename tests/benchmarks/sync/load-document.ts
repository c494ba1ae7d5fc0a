/** One document of a load with all its sockets, each of which writes, and who watches for whom. */
import type { PlannedDocument, PlannedSender } from "./load-plan.ts";
import { type LoadSocket, openLoadSocket } from "./load-socket.ts";

export type Sender = PlannedSender & {
  readonly socket: LoadSocket;
  /** Moments of sending, by update. */
  readonly sentAt: number[];
};

export type LoadDocument = {
  readonly senders: readonly Sender[];
  sendHistory(): void;
  hasHistory(): boolean;
  /** The server has acknowledged every update to its sender. */
  isAcknowledged(): boolean;
  /** Every socket has every update of the others. */
  isEverywhere(): boolean;
  close(): Promise<void>;
};

export type LoadDocumentEvents = {
  /** The next update of a sender has reached another device. */
  readonly onArrival: (sender: Sender, sentAt: number) => void;
  readonly onFault: (error: Error) => void;
};

export async function openLoadDocument(
  serverUrl: string,
  plan: PlannedDocument,
  { onArrival, onFault }: LoadDocumentEvents,
): Promise<LoadDocument> {
  const senders = new Map<number, Sender>();
  const arrived = new Map<number, number>();
  const [first] = plan.senders;
  if (first === undefined || plan.senders.length < 2) throw new Error("A load needs two sockets in each document.");
  const note = (client: number, clock: number): void => {
    const sender = senders.get(client);
    for (let seen = arrived.get(client) ?? 0; seen < clock; seen += 1) {
      arrived.set(client, seen + 1);
      if (sender !== undefined) onArrival(sender, sender.sentAt[seen] ?? Number.NaN);
    }
  };
  // Reading is dear, so only two sockets read while the clock runs: the first for all others, the second for the first
  // and for the history, which the first sends.
  const readers = [
    (client: number, clock: number) => senders.has(client) && client !== first.client && note(client, clock),
    (client: number, clock: number) => (client === first.client || !senders.has(client)) && note(client, clock),
  ];
  for (const [place, planned] of plan.senders.entries()) {
    const onEntries = readers[place];
    const socket = await openLoadSocket(`${serverUrl}${plan.name}`, { ...(onEntries && { onEntries }), onFault });
    senders.set(planned.client, { ...planned, socket, sentAt: [] });
  }
  const all = [...senders.values()];
  return {
    senders: all,
    sendHistory: () => all[0]?.socket.sendFrame(plan.history),
    hasHistory: () => [...plan.historyClocks].every(([client, clock]) => (arrived.get(client) ?? 0) >= clock),
    isAcknowledged: () =>
      all.every(({ client, frames, socket }) => (socket.acknowledged().get(client) ?? 0) >= frames.length),
    isEverywhere: () =>
      all.every(({ client: own, socket }) => {
        const received = socket.received();
        return all.every(({ client, frames }) => client === own || (received.get(client) ?? 0) >= frames.length);
      }),
    close: async () => {
      await Promise.all(all.map(({ socket }) => socket.close()));
    },
  };
}
