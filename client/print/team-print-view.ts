/** The team's sheet for one session as it is printed: for each end of the bikes a table, a row a rider. */
import { print } from "#client/text/print.ts";
import { trade } from "#client/text/trade.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { type SheetResult, setupSheet } from "#core/planning/setup-sheet.ts";
import { type AdjusterPath, adjusterPaths } from "#core/team/adjuster.ts";
import { type End, ends } from "#core/team/place.ts";
import { mountedAdjusters, type RiderBike, riderBikes } from "#core/team/roster.ts";
import { isAt, nameAtEnd, onTheBikeInPrint, valueInPrint } from "./setup-print-view.ts";

/** What to set and what is there; undefined where this bike has no such adjuster. */
export type PrintedCell = { readonly target: string; readonly now: string; readonly standing: string } | undefined;

export interface PrintedRider {
  readonly name: string;
  readonly plate: string;
  readonly cells: readonly PrintedCell[];
  /** Why the setup cannot be worked out, as one sentence in the place of the cells. */
  readonly problem: string | undefined;
}

export interface PrintedEnd {
  readonly end: End;
  readonly title: string;
  readonly columns: readonly string[];
  readonly riders: readonly PrintedRider[];
}

/** The tables of one session; the adjusters are those that any bike of the team has. */
export function teamPrintView(ledger: Ledger, weekendId: string, sessionId: string): readonly PrintedEnd[] {
  const team = riderBikes(ledger).map((mounted) => ({
    mounted,
    result: setupSheet(ledger, weekendId, sessionId, mounted.riderId),
  }));
  return ends.map((end) => {
    const paths = pathsAt(
      end,
      team.map(({ mounted }) => mounted),
    );
    return {
      end,
      title: print.ends[end],
      columns: paths.map(nameAtEnd),
      riders: team.map(({ mounted, result }) => printedRider(mounted, result, paths)),
    };
  });
}

function pathsAt(end: End, team: readonly RiderBike[]): readonly AdjusterPath[] {
  const there = new Set(
    team.flatMap(({ parts }) =>
      mountedAdjusters(parts)
        .filter(({ place }) => isAt(end, place))
        .map(({ path }) => path),
    ),
  );
  return adjusterPaths.filter((path) => there.has(path));
}

function printedRider(mounted: RiderBike, result: SheetResult, paths: readonly AdjusterPath[]): PrintedRider {
  const { rider } = mounted;
  const rows = new Map(result.ok ? result.sheet.rows.map((row) => [row.path, row]) : []);
  return {
    name: rider.name,
    plate: rider.plate === undefined ? "" : print.plate(rider.plate),
    problem: result.ok ? undefined : trade.sheetProblem(result.problem),
    cells: paths.map((path) => {
      const row = rows.get(path);
      if (!row) return undefined;
      return {
        target: valueInPrint(row.bench),
        now: print.now(onTheBikeInPrint(row)),
        standing: print.states[row.state],
      };
    }),
  };
}
