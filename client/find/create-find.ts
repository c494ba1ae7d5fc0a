/** A search through the records of this device, rider by rider, so that the screen answers meanwhile. */
import { type Accessor, createEffect, createSignal, on, onCleanup } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type Findable, findableNames, findablesOfRider } from "#core/planning/findables.ts";
import { folded, wordsOf } from "./folded.ts";
import { type FoundLine, foundLine } from "./found-lines.ts";

/** So many are shown, the latest: nobody reads further than that, and each more word finds less. */
export const MOST_SHOWN = 60;

/** ms without a key after which the search begins. */
const TYPING_PAUSE_MS = 150;

export interface Finding {
  readonly typed: Accessor<string>;
  type(words: string): void;
  /** Names first, then the latest; undefined while nothing is looked for. */
  readonly found: Accessor<readonly FoundLine[] | undefined>;
  readonly isSearching: Accessor<boolean>;
  /** More was found than is shown. */
  readonly isCut: Accessor<boolean>;
}

interface Entry {
  readonly line: FoundLine;
  readonly text: string;
}

/** Looks again when the words change, and when records arrive. */
export function createFind(device: Pick<Device, "ledger" | "member">): Finding {
  const [typed, setTyped] = createSignal("");
  const [found, setFound] = createSignal<readonly FoundLine[]>();
  const [isSearching, setSearching] = createSignal(false);
  const [isCut, setCut] = createSignal(false);
  const role = () => device.member()?.role ?? "rider";
  /** The words to which what is shown is the answer. */
  let shownFor: string | undefined;
  let timer: ReturnType<typeof setTimeout> | undefined;
  let kept:
    | { readonly ledger: Ledger; readonly size: number; readonly byRider: Map<string, readonly Entry[]> }
    | undefined;

  const entriesOf = (ledger: Ledger, riderId: string): readonly Entry[] => {
    if (kept?.ledger !== ledger || kept.size !== ledger.size) kept = { ledger, size: ledger.size, byRider: new Map() };
    const known = kept.byRider.get(riderId);
    if (known) return known;
    const made = findablesOfRider(ledger, riderId).map((item) => entryOf(ledger, item));
    kept.byRider.set(riderId, made);
    return made;
  };
  const entryOf = (ledger: Ledger, item: Findable): Entry => {
    const line = foundLine(ledger, item, role());
    return { line, text: folded(`${line.kind} ${line.title} ${line.details}`) };
  };

  const search = (): void => {
    clearTimeout(timer);
    const wanted = wordsOf(typed());
    if (wanted.length === 0) {
      setFound(undefined);
      setSearching(false);
      return;
    }
    const ledger = device.ledger();
    const holds = ({ text }: Entry) => wanted.every((word) => text.includes(word));
    const items = findableNames(ledger);
    const names = items.map((item) => entryOf(ledger, item)).filter(holds);
    const riders = items.flatMap((item) => (item.type === "rider" ? item.riderId : []));
    // Records that arrive while somebody reads what was found must not take it away under the finger.
    const isAgain = found() !== undefined && wanted.join(" ") === shownFor;
    const show = (rest: readonly Entry[]): void => {
      setFound([...names, ...rest].slice(0, MOST_SHOWN).map(({ line }) => line));
      setCut(names.length + rest.length > MOST_SHOWN);
      shownFor = wanted.join(" ");
    };
    let rest: readonly Entry[] = [];
    const step = (index: number): void => {
      const riderId = riders[index];
      if (riderId === undefined) {
        if (isAgain) show(rest);
        setSearching(false);
        return;
      }
      rest = latest([...rest, ...entriesOf(ledger, riderId).filter(holds)]);
      if (!isAgain) show(rest);
      timer = setTimeout(() => step(index + 1), 0);
    };
    setSearching(true);
    if (!isAgain) show([]);
    timer = setTimeout(() => step(0), 0);
  };

  createEffect(
    on([typed, device.ledger], () => {
      clearTimeout(timer);
      timer = setTimeout(search, TYPING_PAUSE_MS);
    }),
  );
  onCleanup(() => clearTimeout(timer));
  return { typed, type: (words) => setTyped(words), found, isSearching, isCut };
}

/** One more than is shown, so that it is known whether some are left out. */
function latest(entries: readonly Entry[]): readonly Entry[] {
  return [...entries]
    .sort((a, b) => (a.line.at < b.line.at ? 1 : a.line.at > b.line.at ? -1 : 0))
    .slice(0, MOST_SHOWN + 1);
}
