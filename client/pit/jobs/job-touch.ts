/** One touch on a job: what it is called, what it does, and the write. */
import type { Device } from "#client/device/create-device.ts";
import { trade } from "#client/text/trade.ts";
import type { WriteResult } from "#core/ledger/write.ts";
import type { EntriesResult } from "#core/planning/entries.ts";
import type { Programme } from "#core/weekend/programme.ts";

export interface JobTouch {
  readonly id: string;
  readonly label: string;
  /** The same touch once another of this job's was made. */
  readonly labelAfterAll?: string;
  /** What it does, in words. */
  readonly said: string;
  write(): TouchResult;
}

/** What a touch may come to: a write, or a refusal before any write. */
export type TouchResult = WriteResult | { readonly ok: false; readonly sentence: string };

/** What a job's texts and touches need from around it. */
export interface JobContext {
  readonly device: Pick<Device, "ledger" | "write" | "resolve">;
  readonly programme: Programme | undefined;
  /** The session that the bikes are prepared for. */
  readonly sessionId: string | undefined;
}

/** Writes entries, or says why there are none. */
export function writeEntries({ device }: JobContext, entries: EntriesResult): TouchResult {
  return entries.ok ? device.write(entries.entries) : { ok: false, sentence: trade.entryProblem(entries.problem) };
}
