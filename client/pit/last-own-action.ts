/**
 * The last thing that this member did on this device for one rider, and taking
 * it back. Only what is still current can be taken back, so that an undo never
 * touches what somebody else has done since.
 */
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type LedgerRecord, splitSubject } from "#core/ledger/record.ts";
import { type Actor, canTakeBack, ownHeads } from "#core/planning/own-acts.ts";
import { serviceKind } from "#core/planning/service-kinds.ts";
import type { Service } from "#core/service/service-record.ts";
import { parseSettingKey } from "#core/weekend/on-the-bike.ts";
import { decisionKind, settingKind } from "#core/weekend/record-kinds.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { bikeHeads, describeBikeAct, isMounting, wholeMove } from "./bikes/own-bike-acts.ts";
import { workName } from "./service-lines.ts";

/** Whose acts, and for which rider. */
export interface ActorForRider extends Actor {
  readonly riderId: string;
}

export interface OwnAction {
  /** What was done, in words. */
  readonly what: string;
  /** Its records that are still current, newest first: the order in which to take them back. */
  readonly records: readonly LedgerRecord[];
}

/** The last own act, if it can be taken back. An undo is no act of its own; what settled a dispute has no one value before it. */
export function lastOwnAction(ledger: Ledger, actor: ActorForRider): OwnAction | undefined {
  const own = ownOfRider(ledger, actor);
  const last = own[0];
  if (!last) return undefined;
  const records = recordsOf(ledger, last, own);
  return records?.every(({ id }) => canTakeBack(ledger, id)) ? { what: describe(ledger, records), records } : undefined;
}

/** What was written together and still holds; of a part that was moved all of it, or nothing. */
function recordsOf(
  ledger: Ledger,
  last: LedgerRecord,
  own: readonly LedgerRecord[],
): readonly LedgerRecord[] | undefined {
  if (last.batch === undefined) return [last];
  const together = own.filter(({ batch }) => batch === last.batch);
  return together.some(isMounting) ? wholeMove(ledger, last.batch) : together;
}

function ownOfRider(ledger: Ledger, actor: ActorForRider): readonly LedgerRecord[] {
  const heads = ownHeads(ledger, [settingKind, decisionKind, serviceKind], actor, actor.riderId);
  const ofBikes = bikeHeads(ledger, actor.riderId).filter(
    (head) => head.by === actor.memberId && head.device === actor.deviceId && head.cause?.type !== "revert",
  );
  return [...heads, ...ofBikes].sort((a, b) => (a.id < b.id ? 1 : -1));
}

function describe(ledger: Ledger, records: readonly LedgerRecord[]): string {
  const ofBikes = describeBikeAct(ledger, records);
  if (ofBikes !== undefined) return ofBikes;
  const service = records.find(({ subject }) => splitSubject(subject).kind === serviceKind.kind);
  if (service) {
    const { place, what } = service.value as Service;
    return pit.undo.service(common.places[place], workName(place, what));
  }
  const settings = records.filter(({ subject }) => splitSubject(subject).kind === settingKind.kind);
  const [only] = settings;
  if (!only) return pit.undo.left;
  if (settings.length > 1) return pit.undo.settings(settings.length);
  const path = parseSettingKey(splitSubject(only.subject).key)?.path;
  const { quantity } = only.value as Setting;
  return pit.undo.setting(path ? trade.adjuster(path) : only.subject, formatQuantity(quantity));
}
