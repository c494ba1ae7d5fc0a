/** What a document holds: the team's data, or one rider's season. */
export type DocumentScope =
  | { readonly scope: "team" }
  | { readonly scope: "rider"; readonly rider: string; readonly year: number };

/**
 * The name of a scope's document: `team` or `rider/<id>/<year>`.
 * Throws on a rider id or year that {@link parseDocumentName} would refuse.
 */
export function documentNameFor(scope: DocumentScope): string {
  const name = scope.scope === "team" ? "team" : `rider/${scope.rider}/${scope.year}`;
  if (parseDocumentName(name) === undefined) throw new Error(`No document can be named "${name}".`);
  return name;
}

/**
 * Reads a document name; undefined for any other text. A rider id begins with
 * a letter or digit, goes on with letters, digits and `._~-`, 64 at most; a
 * year has four digits.
 */
export function parseDocumentName(name: string): DocumentScope | undefined {
  if (name === "team") return { scope: "team" };
  const match = /^rider\/([A-Za-z0-9][A-Za-z0-9._~-]{0,63})\/([1-9][0-9]{3})$/.exec(name);
  const [, rider, year] = match ?? [];
  return rider === undefined || year === undefined ? undefined : { scope: "rider", rider, year: Number(year) };
}

/**
 * The realm within which record ids and subjects are one: the team's document,
 * or all seasons of one rider. A name that is no document's is its own realm,
 * so that what stands there can touch nothing elsewhere.
 */
export function realmOf(documentName: string): string {
  const scope = parseDocumentName(documentName);
  return scope === undefined ? `?${documentName}` : scope.scope === "team" ? "team" : `rider/${scope.rider}`;
}
