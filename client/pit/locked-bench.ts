/** What a bench that is locked against rain shows: what is to set, in its order, and what is on the bike. */
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { rainLock } from "#client/text/rain-lock.ts";
import { trade } from "#client/text/trade.ts";
import type { LockedGroup } from "#client/widgets/rain-lock.tsx";
import type { SetupSheet } from "#core/planning/setup-sheet.ts";
import { places } from "#core/team/place.ts";
import { valueText } from "./names.ts";
import { onTheBikeText } from "./row-facts.ts";

export function lockedBench(sheet: SetupSheet): readonly LockedGroup[] {
  const { steps } = sheet.sequence;
  const toSet = steps.map((step, index) => ({
    name: `${index + 1}. ${trade.adjuster(step.path)}`,
    value: valueText(step.to),
    lines: [
      step.from ? rainLock.from(valueText(step.from)) : rainLock.fromUnknown,
      ...step.cautions.map((caution) => pit.bench.stepCautions[caution]),
    ],
  }));
  const onTheBike = places.flatMap((place) => {
    const rows = sheet.rows
      .filter(({ found }) => found.place === place)
      .map((row) => ({
        name: common.adjusters[row.found.adjuster.kind],
        value: onTheBikeText(row),
        lines: [pit.sheet.states[row.state]],
      }));
    return rows.length > 0 ? [{ title: rainLock.onTheBike(common.places[place]), rows }] : [];
  });
  return [{ title: steps.length > 0 ? rainLock.toSet : rainLock.nothingToSet, rows: toSet }, ...onTheBike];
}
