/** In which document a record belongs. */
import { documentNameFor } from "#core/ledger/documents.ts";
import type { RecordKind } from "#core/ledger/kind.ts";

/**
 * The document for `key` of `kind` in `season` (a year). A rider's kinds have keys that begin with the rider's id.
 */
export function documentForRecord(kind: RecordKind, key: string, season: number): string {
  return kind.scope === "team"
    ? documentNameFor({ scope: "team" })
    : documentNameFor({ scope: "rider", rider: key.slice(0, key.indexOf("/")), year: season });
}
