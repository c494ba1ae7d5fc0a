/** What an act on a device needs, and how it ends. */
import type { Adjustment } from "#core/advice/adjustment.ts";
import type { ForceCurves } from "#core/advice/force-curves.ts";
import type { WriteEntry, WriteOptions, WriteResult } from "#core/ledger/write.ts";
import { describeLedgerProblem } from "#core/ledger/write.ts";
import { type RiderBike, riderBike } from "#core/team/roster.ts";
import type { SimulatedDevice } from "#scenarios/player/simulated-device.ts";

/** Where an act happens. */
export interface Desk {
  readonly device: SimulatedDevice;
  readonly weekendId: string;
}

/** An adjustment that was taken, with the run that it answers. */
export interface TakenAdjustment {
  readonly riderId: string;
  readonly runId: string;
  readonly adjustment: Adjustment;
  /** Of the part that it changes, before and after. */
  readonly curves: ForceCurves | undefined;
}

/** Done, or one sentence saying why it could not be done; then nothing was written. */
export type ActResult =
  | { readonly ok: true; readonly taken?: TakenAdjustment }
  | { readonly ok: false; readonly sentence: string };

export function refused(sentence: string): ActResult {
  return { ok: false, sentence };
}

/** Writes the entries as one batch. What is current already is no act: a step that changes nothing is a mistake in a script. */
export function writeAll({ device }: Desk, entries: readonly WriteEntry[], options: WriteOptions = {}): ActResult {
  return outcomeOf(device.writer.setMany(entries, options));
}

export function outcomeOf(written: WriteResult): ActResult {
  if (!written.ok) return refused(describeLedgerProblem(written.problem));
  return written.unchanged === true ? refused("It is so already: there is nothing to write.") : { ok: true };
}

/** The rider with his bike, as this device knows them. */
export function mountedOf({ device }: Desk, riderId: string): RiderBike {
  const mounted = riderBike(device.ledger, riderId);
  if (mounted === undefined) throw new Error(`The device ${device.id} does not know the rider ${riderId}.`);
  return mounted;
}
