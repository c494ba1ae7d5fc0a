/** Undo of the last own act at one rider's bench. */
import { type Accessor, createMemo } from "solid-js";
import { deviceId } from "#client/device/identity.ts";
import { browserStorage } from "#client/device/storage/browser-storage.ts";
import { takeBack } from "#client/device/take-back.ts";
import { pit } from "#client/text/pit.ts";
import type { RiderBench } from "./create-rider-bench.ts";
import { lastOwnAction } from "./last-own-action.ts";

export interface Undo {
  /** What an undo would take back; undefined while there is nothing. */
  readonly what: Accessor<string | undefined>;
  undo(): void;
}

/** The undo of this bench. */
export function createUndo({ device, mounted, acts }: RiderBench): Undo {
  const here = deviceId(browserStorage());
  const last = createMemo(() => {
    const riderId = mounted()?.riderId;
    const memberId = device.memberId();
    if (riderId === undefined || memberId === undefined) return undefined;
    return lastOwnAction(device.ledger(), { riderId, memberId, deviceId: here });
  });
  return {
    what: () => last()?.what,
    undo: () => {
      const action = last();
      if (!action) return;
      const ids = action.records.map(({ id }) => id);
      acts.wrote(takeBack(device, ids), pit.undo.done(action.what));
    },
  };
}
