import type * as Y from "yjs";
import { recordsName } from "./document.ts";
import { examineJson } from "./plain-json.ts";
import { parseRecord } from "./record.ts";

/**
 * The entries that only one of two documents holds, whatever numbers they stand under: of `there` those that are records,
 * then those of `here`. Added to both under a fresh client number they make the two hold the same (rule M8).
 */
export function differingEntries(here: Y.Doc, there: Y.Doc): readonly unknown[] {
  const ours = entriesByText(here);
  const theirs = entriesByText(there);
  const foreign = [...theirs].filter(([text, raw]) => !ours.has(text) && parseRecord(raw).ok);
  const own = [...ours].filter(([text]) => !theirs.has(text));
  return [...foreign, ...own].map(([, raw]) => raw);
}

function entriesByText(ydoc: Y.Doc): ReadonlyMap<string, unknown> {
  const entries = ydoc.getArray<unknown>(recordsName).toArray();
  return new Map(entries.map((raw) => [examineJson(raw).text, raw]));
}
