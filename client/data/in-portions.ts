import type { WriteEntry } from "#core/ledger/write.ts";

/** Half of what the server takes as one update, in characters: umlauts and envelopes need room. */
const PORTION_CHARACTERS = 256 * 1024;
/** What an envelope adds to a value. */
const ENVELOPE_CHARACTERS = 600;

/** The entries in their order, in portions that each fit one update of a document. */
export function inPortions(entries: readonly WriteEntry[]): readonly (readonly WriteEntry[])[] {
  const portions: WriteEntry[][] = [];
  let room = 0;
  for (const entry of entries) {
    const size = JSON.stringify(entry.value).length + ENVELOPE_CHARACTERS;
    const last = portions.at(-1);
    if (last && size <= room) {
      last.push(entry);
      room -= size;
    } else {
      portions.push([entry]);
      room = PORTION_CHARACTERS - size;
    }
  }
  return portions;
}
