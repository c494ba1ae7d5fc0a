import { expect, it } from "vitest";
import * as Y from "yjs";
import { coversStateVector } from "#core/protocol/state-vector.ts";
import { join, type RawDevice } from "./raw-device.ts";
import { deviceDocument, freshFolder, numbered, push } from "./server-fixture.ts";
import { startProcess } from "./server-process.ts";

const writers = 3;
/** Updates that the watching device hears before the server is killed: one round each, cut at another place. */
const killAfter = [1, 8, 50, 200, 500];
const mostUpdates = 5000;
/** A writer waits for an acknowledgement after so many updates. */
const burst = 3;

type Cut = { readonly acknowledged: Map<number, number>; readonly passedOn: Y.Doc };

/** Sends a burst of updates, waits for an acknowledgement, and so on until the socket closes. @returns how many it sent. */
async function writeOn(device: RawDevice, clientId: number): Promise<number> {
  const document = deviceDocument(clientId);
  for (let n = 1; n <= mostUpdates; n++) {
    device.sendUpdate(push(document, numbered(n, { clientId, n })));
    if (n % burst !== 0) continue;
    try {
      await device.next("acknowledgement");
    } catch {
      return n;
    }
  }
  return mostUpdates;
}

/** Writes from three devices, kills the server in the middle, and tells what it had promised until then. */
async function writeUntilKilled(folder: string, round: number): Promise<Cut> {
  const server = startProcess("--port", "0", "--data", folder, "--log-level", "silent");
  const url = await server.listening;
  const watcher = await join({ url });
  const devices = await Promise.all(Array.from({ length: writers }, () => join({ url })));
  const written = devices.map((device, index) => writeOn(device, 1 + round * writers + index));
  for (let count = 0; count < (killAfter[round] ?? 1); count++) await watcher.next("update");
  server.child.kill("SIGKILL");
  expect((await server.finished).signal).toBe("SIGKILL");
  await Promise.all([watcher, ...devices].map((device) => device.closed));
  for (const count of await Promise.all(written)) expect(count).toBeLessThan(mostUpdates);
  return promises(watcher, devices);
}

function promises(watcher: RawDevice, devices: readonly RawDevice[]): Cut {
  const acknowledged = new Map<number, number>();
  for (const message of [watcher, ...devices].flatMap(({ heard }) => heard)) {
    if (message.kind !== "acknowledgement") continue;
    for (const [client, clock] of message.stateVector) {
      acknowledged.set(client, Math.max(clock, acknowledged.get(client) ?? 0));
    }
  }
  const passedOn = new Y.Doc();
  for (const message of watcher.heard) if (message.kind === "update") Y.applyUpdate(passedOn, message.update);
  return { acknowledged, passedOn };
}

it("P12 holds every update that it acknowledged or passed on before it was killed", async () => {
  const folder = freshFolder();
  const cuts: Cut[] = [];
  for (let round = 0; round < killAfter.length; round++) cuts.push(await writeUntilKilled(folder, round));

  const url = await startProcess("--port", "0", "--data", folder, "--log-level", "silent").listening;
  const held = await (await join({ url })).everything();
  const heldVector = Y.decodeStateVector(Y.encodeStateVector(held));
  const heldRecords = new Set(
    held
      .getArray("records")
      .toArray()
      .map((record) => JSON.stringify(record)),
  );
  for (const [round, { acknowledged, passedOn }] of cuts.entries()) {
    // A kill within the first bursts may come before any acknowledgement was heard; after them one must have been.
    if ((killAfter[round] ?? 0) > writers * burst) expect(acknowledged.size).toBeGreaterThan(0);
    expect(coversStateVector(heldVector, acknowledged)).toBe(true);
    const records = passedOn.getArray("records").toArray();
    expect(records.length).toBeGreaterThan(0);
    expect(records.filter((record) => !heldRecords.has(JSON.stringify(record)))).toEqual([]);
  }
});
