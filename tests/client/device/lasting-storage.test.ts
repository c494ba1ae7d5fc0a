import { describe, expect, test } from "vitest";
import {
  createLastingStorage,
  SHORT_OF_SPACE,
  type StorageManagerParts,
} from "#client/device/storage/lasting-storage.ts";

/** Room for promises that have been kept already. */
async function settle(): Promise<void> {
  for (let turn = 0; turn < 10; turn += 1) await Promise.resolve();
}

async function open(manager: StorageManagerParts | undefined) {
  const heard: string[] = [];
  const lasting = createLastingStorage(manager, () => heard.push(lasting.promise()));
  await settle();
  return { lasting, heard };
}

/** A browser that answers so, and counts how often it was asked. */
function browser(answers: { readonly persisted: boolean; readonly persist: boolean }) {
  const asked = { persisted: 0, persist: 0 };
  return {
    asked,
    manager: {
      persisted: async () => {
        asked.persisted += 1;
        return answers.persisted;
      },
      persist: async () => {
        asked.persist += 1;
        return answers.persist;
      },
    },
  };
}

describe("the browser's promise to keep what is stored", () => {
  test("is not asked for at the start, since one browser asks the person, who does not know yet what it is about", async () => {
    const { manager, asked } = browser({ persisted: false, persist: true });
    const { lasting } = await open(manager);
    expect(lasting.promise()).toBe("not asked");
    expect(asked.persist).toBe(0);
  });

  test.each([
    [true, "granted"],
    [false, "not granted"],
  ] as const)(
    "asked for and answered with %s it is %s, and is not asked for again in this visit",
    async (persist, promise) => {
      const { manager, asked } = browser({ persisted: false, persist });
      const { lasting, heard } = await open(manager);
      await lasting.ask();
      await lasting.ask();
      expect(lasting.promise()).toBe(promise);
      expect(heard).toEqual([promise]);
      expect(asked.persist).toBe(1);
    },
  );

  test("that was given at an earlier visit stands, and is not asked for", async () => {
    const { manager, asked } = browser({ persisted: true, persist: false });
    const { lasting, heard } = await open(manager);
    expect(lasting.promise()).toBe("granted");
    expect(heard).toEqual(["granted"]);
    await lasting.ask();
    expect(asked.persist).toBe(0);
  });

  test("is not offered where the browser has no storage manager, or one that cannot be asked", async () => {
    for (const manager of [undefined, {}, { persisted: async () => false }]) {
      const { lasting } = await open(manager);
      expect(lasting.promise()).toBe("not offered");
      await lasting.ask();
      expect(lasting.promise()).toBe("not offered");
    }
  });

  test("is not offered by a browser that throws when it is asked, and a failed look is no answer", async () => {
    const refuse = async (): Promise<never> => {
      throw new TypeError("The origin is opaque.");
    };
    const { lasting } = await open({ persisted: refuse, persist: refuse });
    expect(lasting.promise()).toBe("not asked");
    await lasting.ask();
    expect(lasting.promise()).toBe("not offered");
    const { manager } = browser({ persisted: false, persist: true });
    const { lasting: other } = await open({ ...manager, persisted: refuse });
    await other.ask();
    expect(other.promise()).toBe("granted");
  });

  test("two presses at once ask once", async () => {
    const { manager, asked } = browser({ persisted: false, persist: true });
    const { lasting } = await open(manager);
    await Promise.all([lasting.ask(), lasting.ask()]);
    expect(asked.persist).toBe(1);
  });
});

describe("the room for what is stored", () => {
  const estimated = async (estimate: StorageEstimate) =>
    (await open({ estimate: async () => estimate })).lasting.space();

  test("is short below the threshold, and not at it", async () => {
    expect(await estimated({ usage: 1_000_000, quota: SHORT_OF_SPACE + 1_000_000 })).toEqual({
      used: 1_000_000,
      left: SHORT_OF_SPACE,
      isShort: false,
    });
    expect((await estimated({ usage: 1_000_001, quota: SHORT_OF_SPACE + 1_000_000 }))?.isShort).toBe(true);
  });

  test("is none where more is used than is allowed, as after the disk has filled up", async () => {
    expect(await estimated({ usage: 3, quota: 2 })).toEqual({ used: 3, left: 0, isShort: true });
  });

  test("is unknown where the browser does not tell", async () => {
    expect(await estimated({})).toBeUndefined();
    expect((await open({})).lasting.space()).toBeUndefined();
    const refused = await open({ estimate: async () => Promise.reject(new TypeError("not allowed")) });
    expect(refused.lasting.space()).toBeUndefined();
  });

  test("is read again when asked", async () => {
    let usage = 0;
    const { lasting } = await open({ estimate: async () => ({ usage, quota: 100_000_000 }) });
    expect(lasting.space()?.isShort).toBe(false);
    usage = 60_000_000;
    await lasting.measure();
    expect(lasting.space()).toEqual({ used: 60_000_000, left: 40_000_000, isShort: true });
  });
});
