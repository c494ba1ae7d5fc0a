import { describe, expect, test } from "vitest";
import { rememberOwing } from "#client/device/owing-documents.ts";
import { createMemoryStorage } from "#client/device/storage/memory-storage.ts";

const settle = async (): Promise<void> => {
  for (let turn = 0; turn < 20; turn += 1) await Promise.resolve();
};

async function tab(storage = createMemoryStorage()) {
  const opened: string[] = [];
  const owing = rememberOwing({ storage, open: (name) => void opened.push(name), onRead: () => {} });
  await settle();
  return {
    opened,
    close: owing.close,
    follow: async (owed: readonly string[], settled: readonly string[] = []): Promise<void> => {
      owing.follow(owed, settled);
      await settle();
    },
  };
}

describe("what is owed to the server", () => {
  test("is remembered though another tab, which has not opened it, comes to owe something and is rid of it", async () => {
    const storage = createMemoryStorage();
    const [one, two] = [await tab(storage), await tab(storage)];
    await one.follow(["rider/lou/2030"]);
    await two.follow(["rider/anna/2031"]);
    await two.follow([], ["rider/anna/2031"]);
    one.close();
    two.close();
    expect((await tab(storage)).opened).toEqual(["rider/lou/2030"]);
  });

  test("is remembered by a visit that ends before the document has been read", async () => {
    const storage = createMemoryStorage();
    await (await tab(storage)).follow(["rider/lou/2030"]);
    const short = await tab(storage);
    await short.follow([], []);
    short.close();
    expect((await tab(storage)).opened).toEqual(["rider/lou/2030"]);
  });

  test("is forgotten when the server has it", async () => {
    const storage = createMemoryStorage();
    await (await tab(storage)).follow(["rider/lou/2030"]);
    await (await tab(storage)).follow([], ["rider/lou/2030"]);
    expect((await tab(storage)).opened).toEqual([]);
  });

  test("is noted again when what was kept may be gone", async () => {
    const memory = createMemoryStorage();
    let lose = (): void => {};
    const first = await tab({
      ...memory,
      onLoss: (_name, listener) => {
        lose = listener;
        return () => {};
      },
    });
    await first.follow(["rider/lou/2030"]);
    await memory.keepNote("team", "owing", new TextEncoder().encode("[]"));
    lose();
    await settle();
    expect((await tab(memory)).opened).toEqual(["rider/lou/2030"]);
  });
});
