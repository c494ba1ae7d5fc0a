import { onTestFinished } from "vitest";
import WebSocket from "ws";
import { WebsocketProvider } from "y-websocket";
import * as Y from "yjs";
import { season } from "./server-fixture.ts";

export type StockDevice = { readonly document: Y.Doc; readonly provider: WebsocketProvider };

/** A device with y-websocket's provider as it is published, under Node. */
export function stockDevice(server: { readonly url: string }, document = new Y.Doc(), name = season): StockDevice {
  const provider = new WebsocketProvider(`http://${server.url}/sync`, name, document, {
    WebSocketPolyfill: WebSocket as unknown as typeof globalThis.WebSocket,
    disableBc: true,
    maxBackoffTime: 100,
  });
  onTestFinished(() => {
    provider.destroy();
    document.destroy();
  });
  return { document, provider };
}

type Emitter = { on(event: string, listener: () => void): void; off(event: string, listener: () => void): void };

/** Waits until a condition holds, looking each time the emitter says that something happened. */
export function until(emitter: unknown, event: string, holds: () => boolean, patienceMs = 10_000): Promise<void> {
  const source = emitter as Emitter;
  return new Promise((resolve, reject) => {
    const timer = setTimeout(() => {
      source.off(event, look);
      reject(new Error(`Waited in vain for "${event}" until ${holds}.`));
    }, patienceMs);
    function look(): void {
      if (!holds()) return;
      clearTimeout(timer);
      source.off(event, look);
      resolve();
    }
    source.on(event, look);
    look();
  });
}
