/** Setups that a manager sent back with a note, for as long as they are what is on the bike and nobody has approved them. */

import { type Current, type Ledger, settledValue } from "#core/ledger/ledger.ts";
import { sameJson } from "#core/ledger/plain-json.ts";
import type { LedgerRecord } from "#core/ledger/record.ts";
import type { WriteEntry } from "#core/ledger/write.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import type { SetupValues } from "#core/team/baseline.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import { baselineKind, sentBackKind } from "#core/team/record-kinds.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { SentBack } from "#core/team/sent-back.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import type { Setting } from "#core/weekend/setting.ts";
import { riddenSag } from "./ridden-sag.ts";

export interface StandingSendBack {
  readonly type: CourseType;
  readonly record: LedgerRecord<SentBack>;
}

/** As many as the schema takes; more versions than these were never approved apart at one time. */
const MOST_IN_FORCE = 16;

/** The answer to what is on the bike now: not as the baseline for `type`, with the note. Nothing of the bike is changed by it. */
export function sendBackEntry(
  ledger: Ledger,
  mounted: RiderBike,
  type: CourseType,
  weekendId: string,
  note: string,
): WriteEntry<SentBack> {
  const key = `${mounted.riderId}/${type}`;
  const sag = riddenSag(ledger, mounted, weekendId);
  const inForce = ledger.heads(baselineKind, key).map(({ id }) => id);
  return {
    kind: sentBackKind,
    key,
    value: {
      weekend: weekendId,
      bike: mounted.bikeId,
      values: valuesOnBike(settingsOnBike(ledger, mounted)),
      ...(Object.keys(sag).length > 0 && { sag }),
      ...(inForce.length > 0 && { inForce: inForce.slice(0, MOST_IN_FORCE) }),
      note: note.trim(),
    },
  };
}

/**
 * What was sent back and stands; each of several where two managers answered apart. It stands
 * - while the same values are on the same bike and the same sag goes along with them: anything else is a new proposal. An
 *   adjuster in dispute does not count as changed, since nobody knows yet;
 * - while no approval from that weekend is in force that the manager had not in view. No clock decides that, so an
 *   approval that another manager made apart counts, and one that was undone does not.
 */
export function standingSendBacks(ledger: Ledger, mounted: RiderBike): readonly StandingSendBack[] {
  const settings = settingsOnBike(ledger, mounted);
  return courseTypes.flatMap((type) =>
    ledger
      .heads(sentBackKind, `${mounted.riderId}/${type}`)
      .filter(
        ({ value }) =>
          value !== undefined &&
          value.bike === mounted.bikeId &&
          isStillOnBike(value.values, settings) &&
          sameJson(value.sag ?? {}, riddenSag(ledger, mounted, value.weekend)) &&
          !isApprovedSince(ledger, `${mounted.riderId}/${type}`, value),
      )
      .map((record) => ({ type, record })),
  );
}

function isStillOnBike(values: SetupValues, settings: ReadonlyMap<AdjusterPath, Current<Setting>>): boolean {
  return [...settings].every(
    ([path, current]) =>
      current.state === "disputed" || sameJson(values[path] ?? null, settledValue(current)?.quantity ?? null),
  );
}

function isApprovedSince(ledger: Ledger, key: string, { weekend, inForce = [] }: SentBack): boolean {
  return ledger
    .heads(baselineKind, key)
    .some(({ id, cause }) => cause?.type === "approval" && cause.weekend === weekend && !inForce.includes(id));
}
