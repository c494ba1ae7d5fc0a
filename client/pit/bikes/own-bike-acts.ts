/** What this member did on this device with a rider's bikes: moved a part, copied a setup, said which bike is ridden. */
import { spareBike } from "#client/text/spare-bike.ts";
import { bikeName, partName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type LedgerRecord, splitSubject } from "#core/ledger/record.ts";
import { provenanceOf } from "#core/team/provenance.ts";
import { bikeKind, mountingKind, riderKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import { parseSettingKey } from "#core/weekend/on-the-bike.ts";
import { settingKind } from "#core/weekend/record-kinds.ts";

/** The records that hold now of moves to or from a rider's bikes, of copies from them, and of his change of bikes. */
export function bikeHeads(ledger: Ledger, riderId: string): readonly LedgerRecord[] {
  const isOwn = (bikeId: string | undefined): boolean =>
    bikeId !== undefined && knownValue(ledger, bikeKind, bikeId)?.rider === riderId;
  const moves = ledger
    .keys(mountingKind)
    .flatMap((key) => onlyHead(ledger.heads(mountingKind, key)))
    .filter(({ value }) => isOwn(value?.bike) || isOwn(value?.from));
  const copies = ledger
    .keys(settingKind)
    .filter((key) => parseSettingKey(key)?.riderId !== riderId)
    .flatMap((key) => onlyHead(ledger.heads(settingKind, key)))
    .filter(({ cause }) => {
      const provenance = provenanceOf(cause);
      return provenance?.type === "copy" && isOwn(provenance.bike);
    });
  const rides = onlyHead(ledger.heads(riderKind, riderId)).filter((head) => {
    const before = ledger.before(head.id)?.current;
    const earlier = before?.state === "settled" ? (before.value as { readonly bike?: string }).bike : undefined;
    return earlier !== undefined && earlier !== head.value?.bike;
  });
  return [...moves, ...copies, ...rides];
}

/** All records of a move, with the settings that it brought and took; undefined while one of them has been superseded. */
export function wholeMove(ledger: Ledger, batch: string): readonly LedgerRecord[] | undefined {
  const records = [mountingKind, settingKind].flatMap((kind) =>
    ledger.keys(kind).flatMap((key): readonly { readonly record: LedgerRecord; readonly holds: boolean }[] => {
      const heads = ledger.heads<unknown>(kind, key).map(({ id }) => id);
      return ledger
        .history<unknown>(kind, key)
        .filter((record) => record.batch === batch)
        .map((record) => ({ record, holds: heads.length === 1 && heads[0] === record.id }));
    }),
  );
  if (!records.every(({ holds }) => holds)) return undefined;
  return records.map(({ record }) => record).sort((a, b) => (a.id < b.id ? 1 : -1));
}

/** True for a record that says where a part is. */
export function isMounting({ subject }: LedgerRecord): boolean {
  return splitSubject(subject).kind === mountingKind.kind;
}

/** What was done with bikes, in words; undefined where it was something else. */
export function describeBikeAct(ledger: Ledger, records: readonly LedgerRecord[]): string | undefined {
  const words = spareBike.undo;
  const move = records.findLast(isMounting);
  if (move) return words.moved(partName(ledger, splitSubject(move.subject).key));
  const ride = records.find(({ subject }) => splitSubject(subject).kind === riderKind.kind);
  if (ride) return words.rides(bikeName(ledger, (ride.value as { readonly bike: string }).bike));
  const copied = records.filter(({ cause }) => provenanceOf(cause)?.type === "copy");
  return copied.length > 0 && copied.length === records.length ? words.copied(copied.length) : undefined;
}

function onlyHead<Value>(heads: readonly LedgerRecord<Value>[]): readonly LedgerRecord<Value>[] {
  return heads.length === 1 ? heads : [];
}
