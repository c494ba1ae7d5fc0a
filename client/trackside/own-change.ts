/** A change that the rider made on the hill: reported until a mechanic confirms it. */

import type { Device } from "#client/device/create-device.ts";
import { trackside } from "#client/text/trackside.ts";
import { trade } from "#client/text/trade.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { entryField, numberIn } from "#client/widgets/entry-field.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import { settingEntries } from "#core/planning/entries.ts";
import type { MountedAdjuster, RiderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";

export interface OwnChange {
  readonly mounted: RiderBike;
  readonly weekendId: string;
  readonly sessionId: string | undefined;
  readonly surroundings: Surroundings | undefined;
  readonly found: MountedAdjuster;
  /** In the unit of the adjuster's entry field. */
  readonly value: number;
}

export type OwnChangeResult = { readonly ok: boolean; readonly sentence: string };

/** Writes the change; the sentence says what was saved, or why it was not. */
export function writeOwnChange(device: Pick<Device, "ledger" | "write">, change: OwnChange): OwnChangeResult {
  const { mounted, weekendId, sessionId, surroundings, found, value } = change;
  const field = entryField(found.adjuster);
  const quantity = { value, unit: field.unit };
  const words = [adjusterLabel(found.path), formatQuantity(quantity)] as const;
  const onTheBike = valuesOnBike(settingsOnBike(device.ledger(), mounted));
  // The same value again, as exactly as the field shows it, would turn what a mechanic has seen into a mere report.
  if (numberIn(field, onTheBike[found.path]) === value)
    return { ok: true, sentence: trackside.change.unchanged(...words) };
  const made = settingEntries(
    {
      mounted,
      weekendId,
      ...(sessionId !== undefined && { sessionId }),
      ...(surroundings && { heldAt: surroundings }),
      onTheBike,
    },
    { [found.path]: quantity },
    { type: "own change" },
    "reported",
  );
  if (!made.ok) return { ok: false, sentence: trade.entryProblem(made.problem) };
  const written = device.write(made.entries);
  if (!written.ok) return { ok: false, sentence: recordProblemText(written.problem) };
  return { ok: true, sentence: trackside.change.saved(...words) };
}
