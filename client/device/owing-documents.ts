/**
 * Remembers which documents hold something that the server is not proven to
 * have. They are opened at the next start, shown or not: what a phone took in for
 * others, or wrote in a season that is over, still has to get to the server.
 */
import * as z from "zod/mini";
import { parseDocumentName } from "#core/ledger/documents.ts";
import type { DeviceStorage } from "./storage/device-storage.ts";

const namesSchema = z.array(z.string());

export interface OwingDocuments {
  /**
   * @param owing documents, among those that are open, that hold something which the server is not proven to have
   * @param settled those that are read and hold nothing of that sort. What is neither stays as it was noted.
   */
  follow(owing: readonly string[], settled: readonly string[]): void;
  /** The list of before this start has been read, or cannot be: nothing that is owed is overlooked any more. */
  isRead(): boolean;
  close(): void;
}

export interface OwingContext {
  readonly storage: Pick<DeviceStorage, "loadNote" | "changeNote" | "onLoss">;
  /** Called for each document that was owing before this start. */
  readonly open: (name: string) => void;
  /** Called once, when {@link OwingDocuments.isRead} has become true. */
  readonly onRead: () => void;
}

export function rememberOwing({ storage, open, onRead }: OwingContext): OwingDocuments {
  let state: "reading" | "read" | "unreadable" = "reading";
  let wanted: { readonly owing: readonly string[]; readonly settled: readonly string[] } = { owing: [], settled: [] };
  /** What is noted, as far as this tab knows; another one may have added to it. */
  let noted: ReadonlySet<string> = new Set();
  let isWriting = false;
  let closed = false;

  const isNews = (): boolean =>
    wanted.owing.some((name) => !noted.has(name)) || wanted.settled.some((name) => noted.has(name));
  /** One write at a time. A list that cannot be read is not written: a new one would take its place. */
  const keep = async (): Promise<void> => {
    if (isWriting) return;
    isWriting = true;
    try {
      while (!closed && state === "read" && isNews()) {
        const { owing, settled } = wanted;
        await storage.changeNote("team", "owing", (before) => {
          // Another tab of this browser may have open, and owe, what this one has not.
          const names = new Set([...readNames(before), ...owing]);
          for (const name of settled) names.delete(name);
          noted = names;
          return new TextEncoder().encode(JSON.stringify([...names].sort()));
        });
      }
    } catch {
      // Tried again with the next change.
      noted = new Set();
    }
    isWriting = false;
  };
  const stopHearingLosses = storage.onLoss?.("team", () => {
    noted = new Set();
    void keep();
  });
  const settle = (next: "read" | "unreadable", names: readonly string[]): void => {
    if (closed) return;
    state = next;
    noted = new Set(names);
    for (const name of names) open(name);
    onRead();
    void keep();
  };
  storage.loadNote("team", "owing").then(
    (bytes) => settle("read", readNames(bytes)),
    () => settle("unreadable", []),
  );
  return {
    follow: (owing, settled) => {
      wanted = { owing, settled };
      void keep();
    },
    isRead: () => state !== "reading",
    close: () => {
      closed = true;
      stopHearingLosses?.();
    },
  };
}

function readNames(bytes: Uint8Array | undefined): readonly string[] {
  if (!bytes) return [];
  try {
    const parsed = z.safeParse(namesSchema, JSON.parse(new TextDecoder().decode(bytes)));
    return parsed.success ? parsed.data.filter((name) => parseDocumentName(name) !== undefined) : [];
  } catch {
    return [];
  }
}
