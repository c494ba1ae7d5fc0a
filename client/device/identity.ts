/**
 * Who holds this device, and which device it is. Kept in the browser's own small
 * storage; access control is the server's, this only says who writes.
 */
import { ulid } from "ulid";
import type { SmallStorage } from "./storage/browser-storage.ts";

const DEVICE = "pitslate.device";
const MEMBER = "pitslate.member";

/** The id of this device, made at its first start. Where nothing can be stored it lasts for this visit. */
export function deviceId(storage: SmallStorage): string {
  const known = storage.getItem(DEVICE);
  if (known) return known;
  const made = ulid();
  storage.setItem(DEVICE, made);
  return made;
}

/** The member who holds the device, or undefined while nobody has said. */
export function storedMember(storage: SmallStorage): string | undefined {
  return storage.getItem(MEMBER) ?? undefined;
}

/** Remembers who holds the device; undefined forgets. */
export function storeMember(storage: SmallStorage, memberId: string | undefined): void {
  if (memberId === undefined) storage.removeItem(MEMBER);
  else storage.setItem(MEMBER, memberId);
}
