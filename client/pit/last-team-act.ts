/** The last own act about the whole team or its weekends, in words. */
import { ownActs } from "#client/text/own-acts.ts";
import { riderName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type LedgerRecord, splitSubject } from "#core/ledger/record.ts";
import { type Actor, lastBatch, ownHeads } from "#core/planning/own-acts.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import {
  conditionsKind,
  courseKind,
  noRunKind,
  sessionKind,
  venueKind,
  weekendKind,
} from "#core/weekend/record-kinds.ts";

const kinds = [courseKind, conditionsKind, weekendKind, sessionKind, venueKind, riderKind, noRunKind];

export interface TeamAct {
  readonly what: string;
  /** Ids of its records. */
  readonly ids: readonly string[];
}

/** It with all that was written with it; undefined while there is none, or part of it was changed since. */
export function lastTeamAct(ledger: Ledger, actor: Actor): TeamAct | undefined {
  const records = lastBatch(ledger, ownHeads(ledger, kinds, actor));
  const [record] = records ?? [];
  return records && record && { what: nameOf(ledger, record), ids: records.map(({ id }) => id) };
}

function nameOf(ledger: Ledger, { subject }: LedgerRecord): string {
  const { kind, key } = splitSubject(subject);
  const owner = key.split("/")[0] ?? key;
  switch (kind) {
    case courseKind.kind:
    case conditionsKind.kind:
      return ownActs.course;
    case riderKind.kind:
      return ownActs.rider(riderName(ledger, owner));
    case noRunKind.kind:
      return ownActs.noRun(riderName(ledger, owner));
    default:
      return ownActs.weekend;
  }
}
