import { describe, expect, test } from "vitest";
import type { DeviceStorage } from "#client/device/storage/device-storage.ts";
import { createLatestKeeper } from "#client/device/storage/keep-latest.ts";

/** A storage whose writes the test ends, and that can lose what it kept. */
function storage() {
  const writes: { readonly value: number; readonly end: () => void; readonly fail: () => void }[] = [];
  let lose = (): void => {};
  const kept: Pick<DeviceStorage, "keepNote" | "onLoss"> = {
    keepNote: (_document, _note, bytes) =>
      new Promise((resolve, reject) => {
        writes.push({ value: bytes[0] ?? -1, end: resolve, fail: () => reject(new Error("The disk is full.")) });
      }),
    onLoss: (_document, listener) => {
      lose = listener;
      return () => {
        lose = () => {};
      };
    },
  };
  return { kept, writes, lose: () => lose(), values: () => writes.map(({ value }) => value) };
}

const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
};
const bytes = (value: number) => new Uint8Array([value]);

describe("the latest of something small", () => {
  test("is written one at a time, and what came between two writes is passed over", async () => {
    const { kept, writes, values } = storage();
    const keeper = createLatestKeeper(kept, "team", "held");
    for (const value of [1, 2, 3]) keeper.keep(bytes(value));
    expect(values()).toEqual([1]);
    writes[0]?.end();
    await settle();
    expect(values()).toEqual([1, 3]);
  });

  test("is not written again when it is kept already, and is when the storage may have lost it", async () => {
    const { kept, writes, values, lose } = storage();
    const keeper = createLatestKeeper(kept, "team", "owing");
    keeper.keep(bytes(1));
    writes[0]?.end();
    await settle();
    keeper.keep(bytes(1));
    expect(values()).toEqual([1]);
    lose();
    expect(values()).toEqual([1, 1]);
  });

  test("is written again with the next call after a write that failed", async () => {
    const { kept, writes, values } = storage();
    const keeper = createLatestKeeper(kept, "team", "owing");
    keeper.keep(bytes(1));
    writes[0]?.fail();
    await settle();
    expect(values()).toEqual([1]);
    keeper.keep(bytes(1));
    expect(values()).toEqual([1, 1]);
  });

  test("is written no more once it is closed", async () => {
    const { kept, writes, values, lose } = storage();
    const keeper = createLatestKeeper(kept, "team", "held");
    keeper.keep(bytes(1));
    keeper.keep(bytes(2));
    keeper.close();
    writes[0]?.end();
    lose();
    await settle();
    expect(values()).toEqual([1]);
  });
});
