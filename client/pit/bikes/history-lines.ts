/** What was done to one part, bike by bike, in words. */
import { spareBike } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { bikeName, memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { partHistory } from "#core/planning/part-history.ts";

/** Of one stay as many changes are listed; what is older stands in the changelog of the bike. */
const LISTED = 20;

export interface StayLine {
  readonly id: string;
  /** "Race bike, from 3 May until 5 May". */
  readonly title: string;
  readonly count: string;
  /** Newest first. */
  readonly changes: readonly string[];
  readonly more: string | undefined;
}

/** A line for each stay, newest first; none while it is in dispute where the part is. */
export function historyLines(ledger: Ledger, partId: string, bikeId: string | undefined): readonly StayLine[] {
  const words = spareBike.move;
  const stays = partHistory(ledger, partId, bikeId)?.stays ?? [];
  return stays.map(({ bikeId: on, from, until, changes }) => ({
    id: `${from}`,
    title: words.stay(on === undefined ? words.noBike : bikeName(ledger, on), momentText(from), momentText(until)),
    count: changes.length === 0 ? words.noChanges : words.changes(changes.length),
    changes: changes
      .slice(0, LISTED)
      .map(({ path, to, by, at }) =>
        words.change(
          trade.adjuster(path),
          to ? formatQuantity(to) : spareBike.copy.unknown,
          memberName(ledger, by),
          formatMoment(at),
        ),
      ),
    more: changes.length > LISTED ? words.more(changes.length - LISTED) : undefined,
  }));
}

function momentText(at: number | undefined): string | undefined {
  return at === undefined ? undefined : formatMoment(at);
}
