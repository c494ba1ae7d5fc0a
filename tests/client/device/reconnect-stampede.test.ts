/** When the pit laptop comes back, its devices must not come back all at once. */
import { describe, expect, test } from "vitest";
import * as Y from "yjs";
import { connectToServer } from "#client/device/connection/connect-document.ts";
import type { SocketEvents } from "#client/device/connection/socket.ts";
import { createSocketSlots } from "#client/device/connection/socket-slots.ts";
import { createContentDigest } from "#core/ledger/content-digest.ts";
import { createChance } from "#scenarios/player/chance.ts";

const DEVICES = 2000;
const SLICES = 10;
/** ms of the longest wait after each failure: doubled from 300, up to 3000. */
const LONGEST = [300, 600, 1200, 2400, 3000, 3000];

const chance = createChance(20260612);

/** The waits of one device, ms, before each of its next attempts. */
function waitsOfOneDevice(): readonly number[] {
  const waits: number[] = [];
  let events: SocketEvents | undefined;
  let comeBack = (): void => {};
  const ydoc = new Y.Doc();
  const connection = connectToServer({
    name: "team",
    ydoc,
    digest: createContentDigest(ydoc),
    clientId: () => 1,
    slots: createSocketSlots(),
    rank: () => 0,
    openSocket: (_document, opened) => {
      events = opened;
      return { send: () => {}, close: () => {} };
    },
    timers: {
      now: () => 0,
      after: (ms, act) => {
        waits.push(ms);
        comeBack = act;
        return () => {};
      },
    },
    random: () => chance.below(2 ** 32 - 1) / 2 ** 32,
    onChange: () => {},
    onReceipts: () => {},
    onProven: () => {},
  });
  const found = LONGEST.map(() => {
    events?.onClose(1006);
    const wait = waits.at(-1) ?? Number.NaN;
    comeBack();
    return wait;
  });
  connection.close();
  return found;
}

describe("devices that lost the laptop together", () => {
  const devices = Array.from({ length: DEVICES }, waitsOfOneDevice);

  // Each slice is drawn with chance 1/10: 200 of 2000, with a standard deviation of 13.4 (binomial); 4 of these either way.
  test.each(LONGEST.map((longest, failure) => [failure + 1, longest]))(
    "wait after failure %i for times that spread evenly from 0 to below %i ms",
    (failure, longest) => {
      const slices = new Array<number>(SLICES).fill(0);
      for (const waits of devices) {
        const wait = waits[failure - 1] ?? Number.NaN;
        expect(wait).toBeGreaterThanOrEqual(0);
        expect(wait).toBeLessThan(longest);
        const slice = Math.floor((wait / longest) * SLICES);
        slices[slice] = (slices[slice] ?? 0) + 1;
      }
      expect(Math.min(...slices)).toBeGreaterThan(DEVICES / SLICES - 54);
      expect(Math.max(...slices)).toBeLessThan(DEVICES / SLICES + 54);
    },
  );
});
