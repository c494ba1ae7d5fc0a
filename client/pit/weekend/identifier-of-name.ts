/** Identifiers made from names that people give. */

/** Leaves room for a year and a count within the 64 characters of an identifier. */
const MAXIMUM_LENGTH = 48;

/** Small letters, digits and hyphens: "Kestrel Ridge, été" is "kestrel-ridge-ete". `fallback` where none is left. */
export function identifierOfName(name: string, fallback: string): string {
  const plain = name
    .normalize("NFKD")
    .replace(/\p{Mark}/gu, "")
    .toLowerCase()
    .replace(/[^a-z0-9]+/g, "-")
    .slice(0, MAXIMUM_LENGTH)
    .replace(/^-+|-+$/g, "");
  return plain === "" ? fallback : plain;
}

/** `wanted`, or with the first count that is free: "race-2". */
export function freeIdentifier(wanted: string, isTaken: (identifier: string) => boolean): string {
  let identifier = wanted;
  for (let count = 2; isTaken(identifier); count += 1) identifier = `${wanted}-${count}`;
  return identifier;
}

/** The identifier of a weekend: its name and its year, once. */
export function weekendIdentifier(name: string, year: string, isTaken: (identifier: string) => boolean): string {
  const plain = identifierOfName(name, "weekend");
  return freeIdentifier(plain.endsWith(`-${year}`) ? plain : `${plain}-${year}`, isTaken);
}
