/**
 * A hub and its links in memory. A link keeps the order of what is sent over
 * it, as a socket does; which link delivers next is left to seeded chance. What
 * is on its way when a link is cut is lost, and made good after reconnecting by
 * comparing state vectors.
 */
import * as Y from "yjs";
import { inspectUpdate } from "#core/ledger/update-guard.ts";
import type { Chance } from "./chance.ts";

/** What takes part: a device with its documents. */
export interface Endpoint {
  readonly id: string;
  readonly documents: ReadonlyMap<string, Y.Doc>;
}

export interface Network {
  /** Brings a device in, connected. */
  join(endpoint: Endpoint): void;
  cut(deviceId: string): void;
  reconnect(deviceId: string): void;
  /** The devices that are cut off, in the order of joining. */
  cutOff(): readonly string[];
  /** Delivers until nothing is on its way. */
  settle(): void;
  /** Frees the hub's documents. */
  close(): void;
}

interface Message {
  readonly document: string;
  readonly update: Uint8Array;
}

interface Link {
  readonly endpoint: Endpoint;
  connected: boolean;
  toHub: Message[];
  toDevice: Message[];
}

export function createNetwork(chance: Chance): Network {
  const hub = new Map<string, Y.Doc>();
  const links = new Map<string, Link>();

  const hubDocument = (name: string): Y.Doc => {
    const known = hub.get(name);
    if (known !== undefined) return known;
    const created = new Y.Doc();
    created.on("update", (update: Uint8Array, origin: unknown) => {
      for (const link of links.values()) {
        const wants = link.connected && link !== origin && link.endpoint.documents.has(name);
        if (wants) link.toDevice.push({ document: name, update });
      }
    });
    hub.set(name, created);
    return created;
  };

  const linkOf = (deviceId: string): Link => {
    const link = links.get(deviceId);
    if (link === undefined) throw new Error(`The network knows no device "${deviceId}".`);
    return link;
  };

  const exchange = (link: Link): void => {
    for (const [name, ydoc] of link.endpoint.documents) {
      const held = hubDocument(name);
      link.toHub.push({ document: name, update: Y.encodeStateAsUpdate(ydoc, Y.encodeStateVector(held)) });
      link.toDevice.push({ document: name, update: Y.encodeStateAsUpdate(held, Y.encodeStateVector(ydoc)) });
    }
  };

  const receiveAtHub = (link: Link, { document, update }: Message): void => {
    const held = hubDocument(document);
    const inspected = inspectUpdate(update, held);
    if (!inspected.ok)
      throw new Error(`The hub refused an update of ${link.endpoint.id}: ${inspected.problem.sentence}`);
    Y.applyUpdate(held, update, link);
  };

  const deliverOne = (): boolean => {
    const waiting = [...links.values()].flatMap((link) => [
      ...(link.toHub.length > 0 ? [{ link, queue: link.toHub, up: true }] : []),
      ...(link.toDevice.length > 0 ? [{ link, queue: link.toDevice, up: false }] : []),
    ]);
    const chosen = waiting.length > 0 ? waiting[chance.below(waiting.length)] : undefined;
    const message = chosen?.queue.shift();
    if (chosen === undefined || message === undefined) return false;
    if (chosen.up) receiveAtHub(chosen.link, message);
    else deliverToDevice(chosen.link, message);
    return true;
  };

  return {
    join: (endpoint) => {
      const link: Link = { endpoint, connected: true, toHub: [], toDevice: [] };
      links.set(endpoint.id, link);
      for (const [name, ydoc] of endpoint.documents) {
        ydoc.on("update", (update: Uint8Array, origin: unknown) => {
          if (link.connected && origin !== link) link.toHub.push({ document: name, update });
        });
      }
      exchange(link);
    },
    cut: (deviceId) => {
      Object.assign(linkOf(deviceId), { connected: false, toHub: [], toDevice: [] });
    },
    reconnect: (deviceId) => {
      const link = linkOf(deviceId);
      link.connected = true;
      exchange(link);
    },
    cutOff: () => [...links.values()].filter((link) => !link.connected).map(({ endpoint }) => endpoint.id),
    settle: () => {
      // Nothing is sent in answer to a delivery but what it changed, so this ends; the bound is for a fault of ours.
      for (let deliveries = 0; deliverOne(); deliveries += 1) {
        if (deliveries > 1_000_000) throw new Error("The network does not come to rest.");
      }
    },
    close: () => {
      for (const ydoc of hub.values()) ydoc.destroy();
    },
  };
}

function deliverToDevice(link: Link, { document, update }: Message): void {
  const ydoc = link.endpoint.documents.get(document);
  if (ydoc === undefined) throw new Error(`The device ${link.endpoint.id} was sent the document ${document}.`);
  Y.applyUpdate(ydoc, update, link);
}
