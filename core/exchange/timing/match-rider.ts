/** Who of the team a line of a timing system speaks of: by plate, then by name. */
import type { RowRefusal } from "#core/exchange/row-refusal.ts";
import type { RiderBike } from "#core/team/roster.ts";

export type RiderMatch =
  | { readonly ok: true; readonly mounted: RiderBike }
  | { readonly ok: false; readonly refusal: RowRefusal };

/**
 * The one rider with that plate, or else of that name (in any order of words, with or without accents). A plate whose
 * rider has another name is refused: plates pass from one race to the next.
 */
export function matchRider(riders: readonly RiderBike[], plateText: string, nameText: string): RiderMatch {
  const plate = /^#?\s*0*(\d{1,4})$/.exec(plateText.trim())?.[1];
  const words = wordsOf(nameText);
  const byPlate = plate === undefined ? [] : riders.filter(({ rider }) => rider.plate === Number(plate));
  const [one] = byPlate;
  if (plate !== undefined && one && byPlate.length === 1) {
    const own = wordsOf(one.rider.name);
    if (words.length === 0 || words.some((word) => own.includes(word))) return { ok: true, mounted: one };
    return refuse({ type: "plate of another", plate, rider: one.rider.name, said: nameText.slice(0, 60) });
  }
  if (plate !== undefined && byPlate.length > 1) {
    return refuse({ type: "plate of several", plate, riders: byPlate.map(({ rider }) => rider.name) });
  }
  const byName = words.length === 0 ? [] : riders.filter(({ rider }) => isSameName(words, wordsOf(rider.name)));
  const [named] = byName;
  if (named && byName.length === 1) return { ok: true, mounted: named };
  const said = { plate: plateText.trim().slice(0, 20), name: nameText.trim().slice(0, 60) };
  return refuse({ type: named ? "several riders" : "no rider", ...said });
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

function refuse(refusal: RowRefusal): RiderMatch {
  return { ok: false, refusal };
}
