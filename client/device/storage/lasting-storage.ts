/**
 * Whether the browser has promised to keep what this site stores, and how much
 * room there is for it (https://storage.spec.whatwg.org/#storagemanager).
 *
 * Without that promise a browser may delete all of it when space is short, and Safari does after 7 days of use without
 * this site (https://webkit.org/blog/10218/full-third-party-cookie-blocking-and-more/), but for an app on the home screen.
 */

/**
 * What the browser has said.
 *
 * | it offers `persist` | it was asked in this visit | it keeps it | promise     |
 * | ------------------- | -------------------------- | ----------- | ----------- |
 * | no, or it throws    | any                        | any         | not offered |
 * | yes                 | any                        | yes         | granted     |
 * | yes                 | yes                        | no          | not granted |
 * | yes                 | no                         | no          | not asked   |
 */
export type StoragePromise = "not asked" | "granted" | "not granted" | "not offered";

/** Bytes, as far as the browser tells. */
export interface StorageSpace {
  readonly used: number;
  readonly left: number;
  /** Less is left than {@link SHORT_OF_SPACE}. */
  readonly isShort: boolean;
}

/**
 * Bytes below which space counts as short: 50 MB. 2,100 records were measured at 382 kB; at that rate 40 riders with 2,100
 * records each in a season are 15 MB. A log that is put together needs room for the old and the new at once, and a
 * hand-off file once more.
 */
export const SHORT_OF_SPACE = 50_000_000;

/** What is used of `navigator.storage`; older browsers have parts of it. */
export type StorageManagerParts = Partial<Pick<StorageManager, "persisted" | "persist" | "estimate">>;

export interface LastingStorage {
  promise(): StoragePromise;
  /** Undefined while it is not known, or where the browser does not tell. */
  space(): StorageSpace | undefined;
  /**
   * Asks the browser for the promise, once in a visit and only where it was not given already. Call it after a press that
   * wrote something: one browser asks the person, who then knows what it is about.
   */
  ask(): Promise<void>;
  /** Reads the room once more. */
  measure(): Promise<void>;
}

/**
 * @param manager absent where the browser has none: on `http://` beside this machine's own address, and in old browsers
 * @param onChange called whenever what is told here may have changed
 */
export function createLastingStorage(manager: StorageManagerParts | undefined, onChange: () => void): LastingStorage {
  let promise: StoragePromise = manager?.persist ? "not asked" : "not offered";
  let space: StorageSpace | undefined;
  let asked = false;

  const settle = (next: StoragePromise): void => {
    promise = next;
    onChange();
  };
  const look = async (): Promise<void> => {
    if (promise !== "not asked" || !manager?.persisted) return;
    try {
      if (await manager.persisted()) settle("granted");
    } catch {
      // Whether it can be had is told by the answer to the question itself.
    }
  };
  const ask = async (): Promise<void> => {
    if (asked || promise !== "not asked" || !manager?.persist) return;
    asked = true;
    try {
      settle((await manager.persist()) ? "granted" : "not granted");
    } catch {
      settle("not offered");
    }
  };
  const measure = async (): Promise<void> => {
    if (!manager?.estimate) return;
    try {
      const { usage, quota } = await manager.estimate();
      if (usage === undefined || quota === undefined) return;
      const left = Math.max(0, quota - usage);
      space = { used: usage, left, isShort: left < SHORT_OF_SPACE };
      onChange();
    } catch {
      // A browser that does not tell leaves it unknown.
    }
  };
  void look();
  void measure();
  return { promise: () => promise, space: () => space, ask, measure };
}
