/** Taking in a file: what it would change first, then the writing, then its undo. Nothing is written before somebody says so. */

import { createSignal } from "solid-js";
import { ulid } from "ulid";
import type { Device } from "#client/device/create-device.ts";
import { data } from "#client/text/data.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { ReadCandidates } from "#core/exchange/candidate.ts";
import { type Preview, preview } from "#core/exchange/preview.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import { fileProblemText } from "./data-problem-text.ts";
import { inPortions } from "./in-portions.ts";

/** Reads a file's candidates against the ledger as it is at that moment. */
export type Reader = (ledger: Ledger) => ReadCandidates;

export type ImportState =
  | { readonly state: "idle" }
  | { readonly state: "busy"; readonly sentence: string }
  | { readonly state: "refused"; readonly sentence: string }
  | {
      readonly state: "previewed";
      readonly name: string;
      readonly preview: Preview;
      readonly read: Reader;
      /** Why it is shown once more. */
      readonly again?: string;
    }
  | { readonly state: "done"; readonly sentence: string; readonly records: readonly LedgerRecord[] };

export type ImportDevice = Pick<Device, "ledger" | "loaded" | "write" | "revert">;

/** @param pause lets the screen paint, and documents of new riders load */
export function createImport(device: ImportDevice, pause: () => Promise<void>) {
  const [state, setState] = createSignal<ImportState>({ state: "idle" });
  const refuse = (sentence: string): void => void setState({ state: "refused", sentence });
  const show = (name: string, read: Reader, again?: string): void => {
    const found = read(device.ledger());
    if (!found.ok) {
      refuse(fileProblemText(found.problem));
      return;
    }
    const seen = preview(device.ledger(), found);
    setState({ state: "previewed", name, preview: seen, read, ...(again !== undefined && { again }) });
  };
  const look = async (name: string, read: Reader): Promise<void> => {
    setState({ state: "busy", sentence: data.file.reading });
    await pause();
    show(name, read);
  };
  const take = async (): Promise<void> => {
    const now = state();
    if (now.state !== "previewed") return;
    const { name, read } = now;
    setState({ state: "busy", sentence: data.file.writing });
    await pause();
    const found = read(device.ledger());
    const fresh = found.ok ? preview(device.ledger(), found) : undefined;
    if (!fresh || textOf(fresh) !== textOf(now.preview)) return show(name, read, data.moved);
    const entries = fresh.lines.map((line) => line.entry);
    const batch = ulid();
    const records: LedgerRecord[] = [];
    const write = (some: readonly WriteEntry[]): boolean => {
      for (const portion of inPortions(some)) {
        const written = device.write(portion, {
          batch,
          cause: { type: "by hand", note: data.note(name).slice(0, 500) },
        });
        if (!written.ok) {
          refuse(recordProblemText(written.problem));
          return false;
        }
        records.push(...written.records);
      }
      return true;
    };
    // A new rider's own documents open once the team knows him.
    if (!write(entries.filter(({ kind }) => kind.scope === "team"))) return;
    while (!device.loaded()) await pause();
    if (!write(entries.filter(({ kind }) => kind.scope === "rider"))) return;
    setState({ state: "done", sentence: data.done(records.length), records });
  };
  const undo = (): void => {
    const now = state();
    if (now.state !== "done") return;
    let count = 0;
    for (const record of [...now.records].reverse()) {
      if (isStanding(device.ledger(), record) && device.revert(record.id).ok) count += 1;
    }
    setState({ state: "done", sentence: data.undone(count, now.records.length - count), records: [] });
  };
  return { state, look, take, undo, refuse, leave: () => void setState({ state: "idle" }) };
}

function isStanding(ledger: Ledger, { id, subject }: LedgerRecord): boolean {
  const colon = subject.indexOf(":");
  const kind = ledger.registry.find(subject.slice(0, colon));
  const heads = kind ? ledger.heads(kind, subject.slice(colon + 1)) : [];
  return heads.length === 1 && heads[0]?.id === id;
}

function textOf({ lines, same, refused }: Preview): string {
  return JSON.stringify([
    lines.map(({ place, differences, entry }) => [place, differences, entry.value]),
    same,
    refused,
  ]);
}
