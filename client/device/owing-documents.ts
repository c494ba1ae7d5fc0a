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
  /** The list of before this start has been read, or cannot be: nothing that is owed is overlooked any more. */
  isRead(): boolean;
  close(): void;
}

export interface OwingContext {
  readonly storage: Pick<DeviceStorage, "loadNote" | "keepNote" | "onLoss">;
  /** Called for each document that was owing before this start. */
  readonly open: (name: string) => void;
  /** Called once, when {@link OwingDocuments.isRead} has become true. */
  readonly onRead: () => void;
}

export function rememberOwing({ storage, open, onRead }: OwingContext): OwingDocuments {
  const keeper = createLatestKeeper(storage, "team", "owing");
  let state: "reading" | "read" | "unreadable" = "reading";
  let wanted: readonly string[] = [];
  let closed = false;
  const keep = (): void => {
    // Before the old list has been read a new one would take its place, and so would one after it could not be read.
    if (!closed && state === "read") keeper.keep(new TextEncoder().encode(JSON.stringify([...wanted].sort())));
  };
  const settle = (next: "read" | "unreadable", names: readonly string[]): void => {
    if (closed) return;
    state = next;
    for (const name of names) open(name);
    onRead();
    keep();
  };
  storage.loadNote("team", "owing").then(
    (bytes) => settle("read", bytes ? readNames(new TextDecoder().decode(bytes)) : []),
    () => settle("unreadable", []),
  );
  return {
    follow: (names) => {
      wanted = names;
      keep();
    },
    isRead: () => state !== "reading",
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
