/**
 * Who holds this device, and which device it is. Kept in the browser's own small
 * storage; access control is the server's, this only says who writes.
 */
import { ulid } from "ulid";

const DEVICE = "pitslate.device";
const MEMBER = "pitslate.member";

/** Where the two are kept; `localStorage` in a browser, or a stand-in where it is blocked. */
export type IdentityStorage = Pick<Storage, "getItem" | "setItem" | "removeItem">;

/** The id of this device, made at its first start. Where nothing can be stored it lasts for this visit. */
export function deviceId(storage: IdentityStorage): string {
  const known = storage.getItem(DEVICE);
  if (known) return known;
  const made = ulid();
  storage.setItem(DEVICE, made);
  return made;
}

/** The member who holds the device, or undefined while nobody has said. */
export function storedMember(storage: IdentityStorage): string | undefined {
  return storage.getItem(MEMBER) ?? undefined;
}

/** Remembers who holds the device; undefined forgets. */
export function storeMember(storage: IdentityStorage, memberId: string | undefined): void {
  if (memberId === undefined) storage.removeItem(MEMBER);
  else storage.setItem(MEMBER, memberId);
}

/** The browser's storage, or one in memory where the browser forbids it. */
export function browserStorage(): IdentityStorage {
  try {
    localStorage.getItem(DEVICE);
    return localStorage;
  } catch {
    const entries = new Map<string, string>();
    return {
      getItem: (key) => entries.get(key) ?? null,
      setItem: (key, value) => void entries.set(key, value),
      removeItem: (key) => void entries.delete(key),
    };
  }
}
