/** The browser's own small storage, or one in memory for this visit where the browser forbids it. */

/** What is needed of `localStorage` and `sessionStorage`; a stand-in serves as well. */
export type SmallStorage = Pick<Storage, "getItem" | "setItem" | "removeItem">;

/** Kept on this device. */
export function browserStorage(): SmallStorage {
  return allowed(() => localStorage);
}

/** Kept while the tab is open, through reloads. */
export function tabStorage(): SmallStorage {
  return allowed(() => sessionStorage);
}

/** A browser that forbids a storage throws as soon as it is named or read. */
function allowed(storageOf: () => Storage): SmallStorage {
  try {
    const storage = storageOf();
    storage.getItem("pitslate");
    return storage;
  } catch {
    const entries = new Map<string, string>();
    return {
      getItem: (key) => entries.get(key) ?? null,
      setItem: (key, value) => void entries.set(key, value),
      removeItem: (key) => void entries.delete(key),
    };
  }
}
