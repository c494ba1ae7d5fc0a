/** The team board: what there is to do on each bike, and what is in dispute. */
import type { Ledger } from "#core/ledger/ledger.ts";
import { runsByBike, serviceStatus } from "#core/planning/service-status.ts";
import { setupSheet } from "#core/planning/setup-sheet.ts";
import type { RiddenRun } from "#core/service/riding-hours.ts";
import { type RiderBike, riderBikes } from "#core/team/roster.ts";
import { settingsOnBike } from "#core/weekend/on-the-bike.ts";
import { loggedRuns } from "#core/weekend/runs.ts";

export interface BoardCard {
  readonly mounted: RiderBike;
  /** Adjusters to set; undefined while the setup cannot be worked out. */
  readonly toSet: number | undefined;
  readonly toAnswer: number;
  readonly reported: number;
  readonly disputed: number;
  /** Parts due for service, and parts past it. */
  readonly partsDue: number;
  readonly partsOverdue: number;
  /** Whether there is anything to do. */
  readonly open: boolean;
}

/** One card a rider: those with something to do first, each group by plate. */
export function boardCards(ledger: Ledger, weekendId: string, sessionId: string): readonly BoardCard[] {
  const runs = runsByBike(ledger);
  const cards = riderBikes(ledger).map((mounted) => boardCard(ledger, weekendId, sessionId, mounted, runs));
  return [...cards.filter(({ open }) => open), ...cards.filter(({ open }) => !open)];
}

function boardCard(
  ledger: Ledger,
  weekendId: string,
  sessionId: string,
  mounted: RiderBike,
  runs: ReadonlyMap<string, readonly RiddenRun[]>,
): BoardCard {
  const result = setupSheet(ledger, weekendId, sessionId, mounted.riderId);
  const toSet = result.ok ? result.sheet.rows.filter(({ state }) => state === "to set").length : undefined;
  const settings = [...settingsOnBike(ledger, mounted).values()];
  const disputed = settings.filter(({ state }) => state === "disputed").length;
  const reported = settings.filter(
    (current) => current.state === "settled" && current.value.standing === "reported",
  ).length;
  const toAnswer = loggedRuns(ledger, weekendId, mounted.riderId).filter(({ decision }) => !decision).length;
  const states = serviceStatus(ledger, mounted, weekendId, runs).map(({ state }) => state);
  const partsDue = states.filter((state) => state === "due").length;
  const partsOverdue = states.filter((state) => state === "overdue").length;
  const open = (toSet ?? 0) + toAnswer + reported + disputed + partsDue + partsOverdue > 0;
  return { mounted, toSet, toAnswer, reported, disputed, partsDue, partsOverdue, open };
}
