/** Taking in what another device has handed over: what it holds first, then the merge. */
import { createSignal } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import type { Bundle, BundleRefusal } from "#client/device/hand-off/bundle.ts";
import type { BundleNews } from "#client/device/hand-off/describe-bundle.ts";
import { type BundleReading, readBundle } from "#client/device/hand-off/read-bundle.ts";
import { handOff } from "#client/text/hand-off.ts";
import { formatMoment } from "#client/widgets/format.ts";
import { bundleProblemText } from "./hand-off-problem-text.ts";

export type TakeInState =
  | { readonly state: "idle" }
  | { readonly state: "reading" }
  | { readonly state: "refused"; readonly sentence: string }
  | { readonly state: "described"; readonly bundle: Bundle; readonly news: BundleNews }
  | { readonly state: "merging" }
  | { readonly state: "merged"; readonly sentence: string };

export function createTakeIn(device: Device) {
  const [state, setState] = createSignal<TakeInState>({ state: "idle" });
  const refuse = ({ problem }: BundleRefusal): void =>
    void setState({ state: "refused", sentence: bundleProblemText(problem) });
  /** Describes what was read, or says why it is refused. */
  const take = async (reading: BundleReading): Promise<void> => {
    if (!reading.ok) return refuse(reading);
    const described = await device.describeBundle(reading.bundle);
    if (!described.ok) return refuse(described);
    setState({ state: "described", bundle: reading.bundle, news: described.news });
  };
  const read = async (file: Blob): Promise<void> => {
    setState({ state: "reading" });
    let bytes: ArrayBuffer;
    try {
      bytes = await file.arrayBuffer();
    } catch {
      setState({ state: "refused", sentence: handOff.takeIn.unreadable });
      return;
    }
    await take(readBundle(new Uint8Array(bytes)));
  };
  const merge = async (bundle: Bundle): Promise<void> => {
    setState({ state: "merging" });
    const merged = await device.importBundle(bundle);
    if (!merged.ok) return refuse(merged);
    setState({ state: "merged", sentence: mergedInWords(merged.news.records, merged.saved) });
  };
  return { state, read, take, merge, leave: () => void setState({ state: "idle" }) };
}

function mergedInWords(records: number, saved: boolean): string {
  if (records === 0) return handOff.takeIn.nothingNew;
  return saved ? `${handOff.takeIn.merged(records)} ${handOff.takeIn.onward}` : handOff.takeIn.notSaved(records);
}

/** Who made a file and when, and how much is in it. */
export function headerLines({ at, madeBy, documents }: Bundle["header"]): readonly string[] {
  const entries = documents.reduce((sum, { records }) => sum + records, 0);
  return [handOff.takeIn.madeBy(formatMoment(at), madeBy), handOff.takeIn.holds(entries)];
}

/** When what is new was written; undefined when nothing is. */
export function spanInWords({ first, last }: BundleNews): string | undefined {
  if (first === undefined || last === undefined) return undefined;
  return handOff.takeIn.span(formatMoment(first), formatMoment(last));
}
