/**
 * Looks at what devices say of each other: a record that one device claims to be
 * on another's disk must be there, or have been there before that disk was
 * emptied or set back.
 */
import type { SimulatedDevice } from "./simulated-device.ts";

export interface ReceiptJudge {
  /** The disk of a device is about to lose what these ids name. */
  losesStorage(device: SimulatedDevice, ids: ReadonlySet<string>): void;
  /** Every claim of every running device about every record. */
  judge(): void;
  /** Every running device claims every record of every device: nothing is left unsaid. */
  isComplete(): boolean;
}

export interface JudgeContext {
  readonly devices: readonly SimulatedDevice[];
  /** Ids of the records on a device's disk now. */
  readonly onDisk: (device: SimulatedDevice) => ReadonlySet<string>;
  /** Ids of the records in a device's ledger. */
  readonly idsOf: (device: SimulatedDevice) => ReadonlySet<string>;
  readonly report: (what: string) => void;
}

export function createReceiptJudge({ devices, onDisk, idsOf, report }: JudgeContext): ReceiptJudge {
  const onceOnDisk = new Map(devices.map((device) => [device.name, new Set<string>()]));
  const byName = new Map(devices.map((device) => [device.name, device]));
  return {
    losesStorage: (device, ids) => {
      for (const id of ids) onceOnDisk.get(device.name)?.add(id);
    },
    judge: () => {
      for (const witness of devices) {
        const team = witness.running();
        if (!team) continue;
        for (const id of idsOf(witness)) {
          for (const holder of team.holdingOf(id).devices) {
            const device = byName.get(holder.device);
            if (!device || onDisk(device).has(id) || onceOnDisk.get(device.name)?.has(id)) continue;
            report(`${witness.name} says that ${device.name} holds ${id}, and its disk never did`);
          }
        }
      }
    },
    isComplete: () =>
      devices.every((witness) => {
        const team = witness.running();
        return (
          team !== undefined &&
          [...idsOf(witness)].every((id) => {
            const { server, devices: holders } = team.holdingOf(id);
            return server && holders.length === devices.length;
          })
        );
      }),
  };
}
