/** A setup on its way from one bike to another: what would become of it, and taking it. */
import { type Accessor, createMemo, createSignal } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { spareBike } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import type { SelectOption } from "#client/widgets/option-select.tsx";
import type { BenchSequence } from "#core/advice/bench-sequence.ts";
import { type BikeSettings, copyEntries, copySetup, type SetupCopy } from "#core/planning/copy-setup.ts";
import { allBikes, type RiderBike } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { type CopyLine, copyLines } from "./copy-rows.ts";
import { differenceLines } from "./difference-lines.ts";

export interface SetupCopying {
  readonly options: Accessor<readonly SelectOption[]>;
  readonly fromId: Accessor<string | undefined>;
  readonly toId: Accessor<string | undefined>;
  chooseFrom(bikeId: string): void;
  chooseTo(bikeId: string): void;
  /** Undefined while the two are one, or one of them is not known. */
  readonly lines: Accessor<readonly CopyLine[] | undefined>;
  readonly differences: Accessor<readonly string[]>;
  readonly sameSag: Accessor<readonly string[]>;
  /** Undefined while the conditions at the bench are not entered. */
  readonly sequence: Accessor<BenchSequence | undefined>;
  /** The name of the bike that gets the setup. */
  readonly toName: Accessor<string>;
  /** All steps are done on the other bike. */
  take(): void;
}

/** Opens on the bike that is ridden, to another one of the same rider where there is one. */
export function createCopy({
  device,
  acts,
  mounted,
  occasion,
}: Pick<RiderBench, "device" | "acts" | "mounted" | "occasion">): SetupCopying {
  const words = spareBike.copy;
  const [chosenFrom, chooseFrom] = createSignal<string>();
  const [chosenTo, chooseTo] = createSignal<string>();
  const bikes = createMemo(() => allBikes(device.ledger()));
  const fromId = () => chosenFrom() ?? mounted()?.bikeId;
  const toId = () => chosenTo() ?? spareOf(bikes(), mounted());
  const settingsOf = (bikeId: string | undefined): BikeSettings | undefined => {
    const found = bikes().find((bike) => bike.bikeId === bikeId);
    return found && { mounted: found, settings: settingsOnBike(device.ledger(), found) };
  };
  const plan = createMemo(
    (): { readonly copy: SetupCopy; readonly from: BikeSettings; readonly to: BikeSettings } | undefined => {
      const [from, to] = [settingsOf(fromId()), settingsOf(toId())];
      if (!from || !to || from.mounted.bikeId === to.mounted.bikeId) return undefined;
      return { copy: copySetup(from, to, occasion()?.heldAt), from, to };
    },
  );
  return {
    options: () => bikes().map(({ bikeId, bike, rider }) => ({ id: bikeId, label: words.bike(bike.name, rider.name) })),
    fromId,
    toId,
    chooseFrom,
    chooseTo,
    lines: () => {
      const found = plan();
      return found && copyLines(found.copy.rows);
    },
    differences: () => {
      const found = plan();
      return found ? differenceLines(found.copy.differences, found.from.mounted, found.to.mounted) : [];
    },
    sameSag: () =>
      plan()?.copy.sameSag.map(({ path, value }) => words.sameSag(trade.adjuster(path), formatQuantity(value))) ?? [],
    sequence: () => plan()?.copy.sequence,
    toName: () => plan()?.to.mounted.bike.name ?? "",
    take: () => {
      const [found, now] = [plan(), occasion()];
      if (!found || !now?.heldAt) return;
      const { weekendId, sessionId, heldAt } = now;
      const entries = copyEntries(found.copy, found.from, found.to.mounted, {
        weekendId,
        ...(sessionId !== undefined && { sessionId }),
        bench: heldAt,
      });
      const done = words.done(entries.length, found.from.mounted.bike.name, found.to.mounted.bike.name);
      acts.wrote(device.write(entries), done);
    },
  };
}

function spareOf(bikes: readonly RiderBike[], ridden: RiderBike | undefined): string | undefined {
  return bikes.find(({ riderId, bikeId }) => riderId === ridden?.riderId && bikeId !== ridden.bikeId)?.bikeId;
}
