/** The units that each person likes, kept on the device: two people with one tablet each have their own. */
import type { SmallStorage } from "#client/device/storage/browser-storage.ts";
import { chosenDimensions, type ShownUnits, unitChoices } from "#client/text/shown-units.ts";

const KEY = "pitslate.units";

/** The units of a member, or of whom has not said who he is; what cannot be read counts as no choice. */
export function storedUnits(storage: Pick<SmallStorage, "getItem">, memberId: string | undefined): ShownUnits {
  const kept = parsed(storage.getItem(keyOf(memberId)) ?? "{}");
  return Object.fromEntries(
    chosenDimensions.flatMap((dimension) => {
      const unit = unitChoices[dimension].find((choice) => choice === kept[dimension]);
      return unit === undefined ? [] : [[dimension, unit]];
    }),
  );
}

/** Keeps the choice of a member. */
export function storeUnits(
  storage: Pick<SmallStorage, "setItem">,
  memberId: string | undefined,
  units: ShownUnits,
): void {
  storage.setItem(keyOf(memberId), JSON.stringify(units));
}

function keyOf(memberId: string | undefined): string {
  return memberId === undefined ? KEY : `${KEY}.${memberId}`;
}

function parsed(text: string): Readonly<Record<string, unknown>> {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null ? (value as Record<string, unknown>) : {};
  } catch {
    return {};
  }
}
