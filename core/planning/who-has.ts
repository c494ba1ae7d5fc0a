/** Who of the team has what is on a rider's bike on a device of his own. */
import type { Ledger } from "#core/ledger/ledger.ts";
import type { Member } from "#core/team/people.ts";
import { members, riderBike } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";

export interface SetupHolder {
  readonly memberId: string;
  readonly member: Member;
  /** Settings that are not proven to be on the device of this member that has most of them. */
  readonly missing: number;
}

export interface SetupHolding {
  /** How many settings are on the bike; those in dispute count once for each claim. */
  readonly settings: number;
  /** The rider, the mechanics and the managers, by name. */
  readonly holders: readonly SetupHolder[];
}

/** Devices that are proven to hold a record, with the member who has each; a device that nobody has named counts for nobody. */
export type DevicesOf = (
  recordId: string,
) => readonly { readonly device: string; readonly member: string | undefined }[];

/** @returns undefined for a rider without a bike. */
export function whoHasSetup(ledger: Ledger, riderId: string, devicesOf: DevicesOf): SetupHolding | undefined {
  const bike = riderBike(ledger, riderId);
  if (!bike) return undefined;
  const ids = [...settingsOnBike(ledger, bike).values()].flatMap((current) =>
    current.state === "absent" ? [] : current.heads.map(({ id }) => id),
  );
  const heldByDevice = new Map<string, { readonly member: string; held: number }>();
  for (const id of ids) {
    for (const { device, member } of devicesOf(id)) {
      if (member === undefined) continue;
      const known = heldByDevice.get(device) ?? { member, held: 0 };
      known.held += 1;
      heldByDevice.set(device, known);
    }
  }
  const holders = members(ledger)
    .filter(({ member }) => member.role !== "rider" || member.rider === riderId)
    .map(({ id, member }): SetupHolder => {
      const counts = [...heldByDevice.values()].filter((held) => held.member === id).map(({ held }) => held);
      return { memberId: id, member, missing: ids.length - Math.max(0, ...counts) };
    });
  return { settings: ids.length, holders };
}
