/**
 * Remembers which documents hold something that the server is not proven to
 * have. They are opened at the next start, shown or not: what a phone took in for
 * others, or wrote in a season that is over, still has to get to the server.
 */
import * as z from "zod/mini";
import { parseDocumentName } from "#core/ledger/documents.ts";
import type { DeviceStorage } from "./storage/device-storage.ts";
import { createLatestKeeper } from "./storage/keep-latest.ts";

const namesSchema = z.array(z.string());

export interface OwingDocuments {
  /** The documents, among those that are open, that hold something which the server is not proven to have. */
  follow(names: readonly string[]): void;
  close(): void;
}

/** @param open called for each document that was owing before this start */
export function rememberOwing(
  storage: Pick<DeviceStorage, "loadNote" | "keepNote">,
  open: (name: string) => void,
): OwingDocuments {
  const keeper = createLatestKeeper((bytes) => storage.keepNote("team", "owing", bytes));
  let kept: string | undefined;
  let wanted: readonly string[] = [];
  let closed = false;
  const keep = (): void => {
    const text = JSON.stringify([...wanted].sort());
    // Before the old list has been read a new one would take its place.
    if (closed || kept === undefined || text === kept) return;
    kept = text;
    keeper.keep(new TextEncoder().encode(text));
  };
  storage.loadNote("team", "owing").then(
    (bytes) => {
      if (closed) return;
      kept = bytes ? new TextDecoder().decode(bytes) : "[]";
      for (const name of readNames(kept)) open(name);
      keep();
    },
    // A storage that cannot be read is told by the documents themselves; the list stays for the next start.
    () => {},
  );
  return {
    follow: (names) => {
      wanted = names;
      keep();
    },
    close: () => {
      closed = true;
      keeper.close();
    },
  };
}

function readNames(text: string): readonly string[] {
  try {
    const parsed = z.safeParse(namesSchema, JSON.parse(text));
    return parsed.success ? parsed.data.filter((name) => parseDocumentName(name) !== undefined) : [];
  } catch {
    return [];
  }
}
