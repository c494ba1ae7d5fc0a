/** A part that is to be moved, while the screen is open, with its history. */
import { type Accessor, createMemo, createSignal } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { spareBike } from "#client/text/spare-bike.ts";
import { partName } from "#client/widgets/names.ts";
import type { SelectOption } from "#client/widgets/option-select.tsx";
import { movePart } from "#core/planning/move-part.ts";
import { historyLines, type StayLine } from "./history-lines.ts";
import {
  type Air,
  ASIDE,
  asksForAir,
  type MovablePart,
  type MoveDraft,
  movableParts,
  movedText,
  moveProblemText,
  partThere,
  placesToGo,
  type Swap,
} from "./move-draft.ts";

export interface PartMoving {
  readonly draft: Accessor<MoveDraft>;
  readonly parts: Accessor<readonly SelectOption[]>;
  readonly chosen: Accessor<MovablePart | undefined>;
  readonly destinations: Accessor<readonly SelectOption[]>;
  /** The name of the part that is in the place there. */
  readonly there: Accessor<string | undefined>;
  readonly asksForAir: Accessor<boolean>;
  readonly history: Accessor<readonly StayLine[]>;
  choosePart(partId: string): void;
  chooseTo(to: string): void;
  chooseSwap(swap: Swap | undefined): void;
  chooseAir(air: Air | undefined): void;
  /** It is moved: writes it, or says why not. */
  save(): void;
}

export function createMove(
  { device, acts }: Pick<RiderBench, "device" | "acts">,
  riderId: Accessor<string>,
): PartMoving {
  const words = spareBike.move;
  const empty: MoveDraft = { partId: undefined, to: undefined, swap: "swap", air: undefined };
  const [draft, setDraft] = createSignal<MoveDraft>(empty);
  const movable = createMemo(() => movableParts(device.ledger(), riderId()));
  const chosen = createMemo(() => movable().find(({ partId }) => partId === draft().partId) ?? movable()[0]);
  const destinations = createMemo(() => {
    const moved = chosen();
    return moved ? placesToGo(device.ledger(), moved, riderId()) : [];
  });
  // A place was chosen for one part: it is none for another that has come in its stead because somebody moved the first away.
  const to = (): string | undefined =>
    chosen()?.partId === draft().partId ? destinations().find(({ id }) => id === draft().to)?.id : undefined;
  const there = createMemo(() => {
    const moved = chosen();
    return moved && partThere(device.ledger(), to(), moved.part.place);
  });
  const needsAir = createMemo(() => asksForAir(device.ledger(), [chosen()?.partId, there()]));
  return {
    draft: () => ({ ...draft(), partId: chosen()?.partId, to: to() }),
    parts: () => movable().map(({ partId, label }) => ({ id: partId, label })),
    chosen,
    destinations,
    there: () => {
      const found = there();
      return found === undefined ? undefined : partName(device.ledger(), found);
    },
    asksForAir: needsAir,
    history: createMemo(() => {
      const moved = chosen();
      return moved ? historyLines(device.ledger(), moved.partId, moved.bikeId) : [];
    }),
    choosePart: (partId) => setDraft({ ...empty, partId }),
    chooseTo: (id) => setDraft((now) => ({ ...now, partId: chosen()?.partId, to: id === "" ? undefined : id })),
    chooseSwap: (swap = "swap") => setDraft((now) => ({ ...now, swap })),
    chooseAir: (air) => setDraft((now) => ({ ...now, air })),
    save: () => {
      const [moved, where] = [chosen(), to()];
      if (!moved || where === undefined) return acts.refuse(words.needsPlace);
      const { air, swap } = draft();
      if (needsAir() && air === undefined) return acts.refuse(words.needsAir);
      const target = where === ASIDE ? undefined : where;
      const result = movePart(device.ledger(), {
        partId: moved.partId,
        from: moved.bikeId,
        to: target,
        swap: swap === "swap",
        airKept: air === "kept",
      });
      if (!result.ok) return acts.refuse(moveProblemText(device.ledger(), result.problem));
      const done = movedText(device.ledger(), moved.partId, target);
      if (acts.wrote(device.write(result.entries), done)) setDraft({ ...empty, partId: moved.partId });
    },
  };
}
