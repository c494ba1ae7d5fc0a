/** The moments of a bike's changelog to choose from, in words. */
import { valueText } from "#client/pit/names.ts";
import { moments as words } from "#client/text/moments.ts";
import { trade } from "#client/text/trade.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { beforeWeekend, type MadeTogether, type Moment, momentsOf } from "#core/planning/bike-at-moment.ts";
import type { RiderBike } from "#core/team/roster.ts";
import type { Programme } from "#core/weekend/programme.ts";

export interface MomentChoice {
  readonly id: string;
  readonly label: string;
  readonly moment: Moment;
}

export const NOW: MomentChoice = { id: "now", label: words.now, moment: { is: "now" } };

/** Now, every moment at which something was changed, newest first, and before the weekend: the last of them. */
export function momentChoices(
  ledger: Ledger,
  mounted: RiderBike,
  plan: Programme,
): readonly [now: MomentChoice, ...MomentChoice[]] {
  const moments = momentsOf(ledger, mounted);
  const before = {
    id: "before",
    label: words.before(plan.weekend.name),
    moment: beforeWeekend(moments, plan.weekendId),
  };
  return [NOW, ...moments.map((together) => choiceOf(ledger, together)), before];
}

function choiceOf(ledger: Ledger, { changes, moment }: MadeTogether): MomentChoice {
  const [last] = changes;
  const what =
    changes.length > 1
      ? words.several(changes.length)
      : words.one(trade.adjuster(last.path), last.to ? formatQuantity(last.to) : valueText(undefined));
  return { id: last.id, label: words.after(formatMoment(last.at), what, memberName(ledger, last.by)), moment };
}
