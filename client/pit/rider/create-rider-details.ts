/** A rider's mass, front share and style while they are open to be changed. */

import { type Accessor, createSignal, untrack } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import type { Acts } from "#client/pit/create-acts.ts";
import { riderDetails } from "#client/text/rider-details.ts";
import { type EntryField, entryField, numberIn } from "#client/widgets/entry-field.ts";
import { formatNumber, formatQuantity } from "#client/widgets/format.ts";
import { recordProblemText } from "#client/widgets/record-problem-text.ts";
import type { Rider } from "#core/team/people.ts";
import { riderKind } from "#core/team/record-kinds.ts";
import type { RidingStyle } from "#core/team/riding-style.ts";
import { knownValue } from "#core/team/roster.ts";

/** `mass` in the unit of {@link massField}; `frontShare` in parts of 1, undefined while it is not measured. */
export interface RiderDraft {
  readonly mass: number | undefined;
  readonly frontShare: number | undefined;
  /** undefined counts as usual. */
  readonly style: RidingStyle | undefined;
}

export interface RiderDetailsState {
  readonly draft: Accessor<RiderDraft>;
  readonly problem: Accessor<string | undefined>;
  /** Two people have entered different values, which saving settles. */
  readonly disputed: Accessor<boolean>;
  set(fields: Partial<RiderDraft>): void;
  /** True when it is stored as it is typed. */
  save(): boolean;
}

/** The details of one rider as they are known when this is made; only what is changed here is written. */
export function createRiderDetails(
  device: Pick<Device, "ledger" | "write">,
  acts: Pick<Acts, "wrote">,
  riderId: string,
): RiderDetailsState {
  const rider = (): Rider | undefined => knownValue(device.ledger(), riderKind, riderId);
  let opened = untrack(() => draftOf(rider()));
  const [draft, setDraft] = createSignal(opened);
  const [problem, setProblem] = createSignal<string>();
  const refuse = (sentence: string): boolean => {
    setProblem(sentence);
    return false;
  };
  /** Takes over what somebody else has saved since; true when both have changed the same to different values. */
  const takeOver = (): boolean => {
    const now = draftOf(rider());
    const mine = draft();
    const isMine = (field: keyof RiderDraft) => mine[field] !== opened[field];
    const clash = (["mass", "frontShare", "style"] as const).some(
      (field) => isMine(field) && now[field] !== opened[field] && now[field] !== mine[field],
    );
    setDraft({
      mass: isMine("mass") ? mine.mass : now.mass,
      frontShare: isMine("frontShare") ? mine.frontShare : now.frontShare,
      style: isMine("style") ? mine.style : now.style,
    });
    opened = now;
    return clash;
  };
  return {
    draft,
    problem,
    disputed: () => device.ledger().current(riderKind, riderId).state === "disputed",
    set: (fields) => {
      setDraft((now) => ({ ...now, ...fields }));
      setProblem(undefined);
    },
    save: () => {
      const before = rider();
      if (!before) return false;
      if (takeOver()) return refuse(riderDetails.changedMeanwhile);
      const { mass, frontShare, style } = draft();
      if (mass === undefined) return refuse(riderDetails.needsMass);
      const { frontShare: _share, style: _style, ...rest } = before;
      const value: Rider = {
        ...rest,
        // A mass that was typed in another unit stays as it was typed until it is changed.
        mass: mass === opened.mass ? before.mass : { value: mass, unit: massField().unit },
        ...(frontShare !== undefined && { frontShare }),
        ...(style !== undefined && { style }),
      };
      const wrote = device.write([{ kind: riderKind, key: riderId, value, cause: { type: "by hand" } }]);
      if (!wrote.ok) return refuse(recordProblemText(wrote.problem));
      acts.wrote(wrote, riderDetails.saved(value.name, formatQuantity(value.mass), shareText(value.frontShare)));
      opened = draftOf(value);
      return true;
    },
  };
}

/** The front share in words. */
export function shareText(frontShare: number | undefined): string {
  return frontShare === undefined ? riderDetails.notMeasured : formatNumber(frontShare);
}

function draftOf(rider: Rider | undefined): RiderDraft {
  return { mass: numberIn(massField(), rider?.mass), frontShare: rider?.frontShare, style: rider?.style };
}

/** How the rider's mass is typed, ready to ride. */
export function massField(): EntryField {
  return entryField({ unit: "kg", step: 0.5, minimum: 30, maximum: 160 });
}
