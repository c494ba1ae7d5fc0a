import * as decoding from "lib0/decoding";
import * as encoding from "lib0/encoding";
import { maximumPresenceBytes } from "#core/protocol/limits.ts";

/** At most this many present devices are kept for one document. */
export const maximumPresentDevices = 1000;

/** Bytes that a present device takes in a message beside its state: two numbers, a length, and the count of devices. */
const bytesBesideState = 24;

type Entry = { readonly clock: number; readonly state: string; readonly owner: object };
/** What a presence payload says of one device; `state` is JSON, "null" when it has gone. */
export type PresenceChange = { readonly client: number; readonly clock: number; readonly state: string };

/**
 * Who is here, as a relay: it keeps the newest state of each device and removes it when the socket that owns it closes.
 * All states together fit into one message: what would exceed it is not taken, since a newcomer, or the server at the
 * other end of a link, could not read it.
 * y-protocols' own Awareness is not used because it needs a clock and timers, and because there a device that comes
 * back before its dead socket is noticed is removed with that socket.
 */
export type Presence = {
  /** Takes a presence payload. @returns what changed, to be sent to everybody, or "nothing" or "malformed". */
  receive(owner: object, payload: Uint8Array): Uint8Array | "nothing" | "malformed";
  /** The payload with all present devices; undefined when there are none. */
  everybody(): Uint8Array | undefined;
  /** Removes the devices of a socket. @returns the payload that says so; undefined when it had none. */
  leave(owner: object): Uint8Array | undefined;
};

export function createPresence(): Presence {
  const entries = new Map<number, Entry>();
  const heard = new WeakSet<object>();
  let bytes = 0;

  function remove(client: number): boolean {
    bytes -= bytesOf(entries.get(client));
    return entries.delete(client);
  }

  /** @returns false when there is no room for it; then it stays as it was. */
  function put(client: number, entry: Entry): boolean {
    const next = bytes - bytesOf(entries.get(client)) + bytesOf(entry);
    if (next > maximumPresenceBytes) return false;
    bytes = next;
    entries.set(client, entry);
    return true;
  }

  /**
   * A stock client repeats what it is told about others, so only what is newer moves a device to this socket. The one
   * exception is the first payload of a socket when it names one device: that is the device itself, come back.
   */
  function take(change: PresenceChange, owner: object, isIntroduction: boolean): boolean {
    const known = entries.get(change.client);
    if (known === undefined) {
      if (change.state === "null" || entries.size >= maximumPresentDevices) return false;
      return put(change.client, { ...change, owner });
    }
    if (change.clock < known.clock) return false;
    if (change.state === "null") return remove(change.client);
    const isNewer = change.clock > known.clock;
    return (isNewer || isIntroduction) && put(change.client, { ...change, owner }) && isNewer;
  }

  return {
    receive(owner, payload) {
      const changes = readPresence(payload);
      if (changes === undefined) return "malformed";
      const isIntroduction = !heard.has(owner) && changes.length === 1;
      heard.add(owner);
      const taken = changes.filter((change) => take(change, owner, isIntroduction));
      return taken.length === 0 ? "nothing" : writePresence(taken);
    },
    everybody() {
      if (entries.size === 0) return undefined;
      return writePresence([...entries].map(([client, entry]) => ({ client, clock: entry.clock, state: entry.state })));
    },
    leave(owner) {
      const gone: PresenceChange[] = [];
      for (const [client, entry] of entries) {
        if (entry.owner !== owner) continue;
        remove(client);
        gone.push({ client, clock: entry.clock, state: "null" });
      }
      return gone.length === 0 ? undefined : writePresence(gone);
    },
  };
}

function bytesOf(entry: Entry | undefined): number {
  return entry === undefined ? 0 : Buffer.byteLength(entry.state) + bytesBesideState;
}

/** Source of the encoding: y-protocols 1.0, awareness.js. The state is checked because clients parse it unguarded. */
export function readPresence(payload: Uint8Array): PresenceChange[] | undefined {
  try {
    const decoder = decoding.createDecoder(payload);
    const count = decoding.readVarUint(decoder);
    if (count > maximumPresentDevices) return undefined;
    const changes: PresenceChange[] = [];
    for (let index = 0; index < count; index++) {
      const client = decoding.readVarUint(decoder);
      const clock = decoding.readVarUint(decoder);
      const state = decoding.readVarString(decoder);
      changes.push({ client, clock, state: JSON.stringify(JSON.parse(state)) });
    }
    return changes;
  } catch {
    return undefined;
  }
}

export function writePresence(changes: readonly PresenceChange[]): Uint8Array {
  const encoder = encoding.createEncoder();
  encoding.writeVarUint(encoder, changes.length);
  for (const change of changes) {
    encoding.writeVarUint(encoder, change.client);
    encoding.writeVarUint(encoder, change.clock);
    encoding.writeVarString(encoder, change.state);
  }
  return encoding.toUint8Array(encoder);
}
