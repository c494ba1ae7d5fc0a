/** Two moments of a bike's changelog, how they differ, and the way back to the first of them. */
import { type Accessor, createMemo, createSignal } from "solid-js";
import type { RiderBench } from "#client/pit/create-rider-bench.ts";
import { moments as words } from "#client/text/moments.ts";
import { type BackToMoment, backToMoment, backToMomentEntries } from "#core/planning/back-to-moment.ts";
import { differencesBetween, settingsAt } from "#core/planning/bike-at-moment.ts";
import { type DifferenceRow, differenceRows } from "./difference-rows.ts";
import { type MomentChoice, momentChoices, NOW } from "./moment-choices.ts";

export interface Moments {
  readonly choices: Accessor<readonly MomentChoice[]>;
  readonly earlier: Accessor<MomentChoice>;
  readonly later: Accessor<MomentChoice>;
  chooseEarlier(id: string): void;
  chooseLater(id: string): void;
  readonly rows: Accessor<readonly DifferenceRow[]>;
  /** Pressures are compared as they read at the bench. */
  readonly isAtTheBench: Accessor<boolean>;
  /** Absent until course and conditions are entered. */
  readonly plan: Accessor<BackToMoment | undefined>;
  /** Writes the way back as one batch. */
  goBack(): void;
}

/** Opens on the time before the weekend against now. */
export function createMoments(
  bench: Pick<RiderBench, "device" | "mounted" | "chosen" | "settings" | "occasion" | "acts">,
): Moments {
  const [earlierId, setEarlierId] = createSignal("before");
  const [laterId, setLaterId] = createSignal(NOW.id);
  const choices = createMemo((): readonly MomentChoice[] => {
    const [mounted, plan] = [bench.mounted(), bench.chosen.programme()];
    return mounted && plan ? momentChoices(bench.device.ledger(), mounted, plan) : [NOW];
  });
  const chosen = (id: string): MomentChoice => choices().find((choice) => choice.id === id) ?? NOW;
  const earlier = createMemo(() => chosen(earlierId()));
  const later = createMemo(() => chosen(laterId()));
  const heldAt = () => bench.occasion()?.heldAt;
  const rows = createMemo(() => {
    const mounted = bench.mounted();
    if (!mounted) return [];
    const at = ({ moment }: MomentChoice) => settingsAt(bench.device.ledger(), mounted, moment);
    return differenceRows(differencesBetween(mounted, at(earlier()), at(later()), heldAt()));
  });
  const plan = createMemo(() => {
    const [mounted, surroundings] = [bench.mounted(), heldAt()];
    if (!mounted || !surroundings) return undefined;
    const settings = settingsAt(bench.device.ledger(), mounted, earlier().moment);
    return backToMoment(mounted, settings, bench.settings(), surroundings);
  });
  return {
    choices,
    earlier,
    later,
    chooseEarlier: setEarlierId,
    chooseLater: setLaterId,
    rows,
    isAtTheBench: () => heldAt() !== undefined,
    plan,
    goBack: () => {
      const [occasion, steps] = [bench.occasion(), plan()];
      if (!occasion || !steps) return;
      bench.acts.write(
        backToMomentEntries(occasion, steps, words.note(earlier().label)),
        words.done(steps.steps.length),
      );
    },
  };
}
