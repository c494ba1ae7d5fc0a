/** An address in the pit for the weekend and session that are chosen. */

/** @param query the choice as the end of an address: `?weekend=…&session=…` */
export function placeAddress(path: string, query: string): string {
  return path.includes("?") ? `${path}&${query.slice(1)}` : `${path}${query}`;
}
