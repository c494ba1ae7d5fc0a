/** Who of the team a line of a timing system speaks of: by plate, then by name. */
import type { RiderBike } from "#core/team/roster.ts";

export type RiderMatch =
  | { readonly ok: true; readonly mounted: RiderBike }
  | { readonly ok: false; readonly sentence: string };

/**
 * The one rider with that plate, or else of that name (in any order of words, with or without accents). A plate whose
 * rider has another name is refused: plates pass from one race to the next.
 */
export function matchRider(riders: readonly RiderBike[], plateText: string, nameText: string): RiderMatch {
  const plate = /^#?\s*0*(\d{1,4})$/.exec(plateText.trim())?.[1];
  const words = wordsOf(nameText);
  const byPlate = plate === undefined ? [] : riders.filter(({ rider }) => rider.plate === Number(plate));
  const [one] = byPlate;
  if (one && byPlate.length === 1) {
    const own = wordsOf(one.rider.name);
    if (words.length === 0 || words.some((word) => own.includes(word))) return { ok: true, mounted: one };
    return refusal(`Plate ${plate} is ${one.rider.name} here, and the file says "${nameText.slice(0, 60)}".`);
  }
  if (byPlate.length > 1) {
    return refusal(`Plate ${plate} is on ${byPlate.map(({ rider }) => rider.name).join(" and ")} here.`);
  }
  const byName = words.length === 0 ? [] : riders.filter(({ rider }) => isSameName(words, wordsOf(rider.name)));
  const [named] = byName;
  if (named && byName.length === 1) return { ok: true, mounted: named };
  const said = [plateText.trim() && `plate ${plateText.trim().slice(0, 20)}`, nameText.trim().slice(0, 60)];
  const who = said.filter(Boolean).join(", ") || "no plate and no name";
  return refusal(`${named ? "More than one rider" : "Nobody"} of the team fits: ${who}.`);
}

function isSameName(words: readonly string[], own: readonly string[]): boolean {
  const [fewer, more] = words.length <= own.length ? [words, own] : [own, words];
  return fewer.every((word) => more.includes(word));
}

function wordsOf(name: string): readonly string[] {
  return (
    name
      .slice(0, 200)
      .normalize("NFKD")
      .replace(/\p{M}/gu, "")
      .toLowerCase()
      .match(/[\p{L}\p{N}]+/gu) ?? []
  );
}

function refusal(sentence: string): RiderMatch {
  return { ok: false, sentence };
}
