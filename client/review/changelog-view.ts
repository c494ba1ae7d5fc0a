/** The team's changelog of a weekend: who, when, what and why, newest first. */
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { trade } from "#client/text/trade.ts";
import { adjusterLabel } from "#client/widgets/adjuster-label.ts";
import { formatMoment, formatQuantity } from "#client/widgets/format.ts";
import { memberName, riderName, sessionName } from "#client/widgets/names.ts";
import { provenanceInWords } from "#client/widgets/provenance-in-words.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { approvals } from "#core/planning/baseline-approvals.ts";
import { answeredRun } from "#core/planning/changelog-text.ts";
import type { AdjusterPath } from "#core/team/adjuster.ts";
import { type Change, changelog } from "#core/weekend/changelog.ts";
import { type LoggedRun, loggedRuns } from "#core/weekend/runs.ts";

export interface ChangeLine {
  readonly id: string;
  readonly at: string;
  readonly when: string;
  readonly who: string;
  readonly rider: string;
  readonly what: string;
  readonly before: string | undefined;
  readonly after: string;
  /** Sentences. */
  readonly why: readonly string[];
}

/** Settings and approved baselines of a weekend, of one rider or of all; with `path` the settings of that adjuster alone. */
export function changelogView(
  ledger: Ledger,
  weekendId: string,
  riderId: string | undefined,
  path?: AdjusterPath,
): readonly ChangeLine[] {
  const runs = new Map(loggedRuns(ledger, weekendId, riderId).map((logged) => [logged.id, logged]));
  const filter = { weekend: weekendId, ...(riderId !== undefined && { riderId }) };
  const settings = changelog(ledger, { ...filter, ...(path !== undefined && { path }) }).map((change) =>
    settingLine(ledger, change, runs),
  );
  // A baseline is all adjusters together, so that it is none of one.
  if (path !== undefined) return settings;
  const baselines = approvals(ledger, filter).map(({ record, riderId: of, type }): ChangeLine => {
    return {
      ...authorOf(ledger, record, of),
      what: review.changelog.baseline(common.courseTypes[type]),
      before: undefined,
      after: review.changelog.newVersion,
      why: [trade.cause({ cause: record.cause, voided: undefined })],
    };
  });
  return [...settings, ...baselines].sort((a, b) => (a.at === b.at ? (a.id < b.id ? 1 : -1) : a.at < b.at ? 1 : -1));
}

function settingLine(ledger: Ledger, change: Change, runs: ReadonlyMap<string, LoggedRun>): ChangeLine {
  const answered = answeredRun(change);
  const run = answered === undefined ? undefined : runs.get(answered);
  const words = review.changelog;
  const before = change.from.map(formatQuantity).join(" / ");
  const to = change.to ? formatQuantity(change.to) : words.withdrawn;
  return {
    ...authorOf(ledger, change, change.riderId),
    what: adjusterLabel(change.path),
    before: before === "" || before === to ? undefined : before,
    after: before === "" ? words.firstSet(to) : before === to ? words.still(to) : to,
    why: [
      provenanceInWords(ledger, change.cause, change.to === undefined) ?? trade.cause(change),
      ...(run ? [words.answers(sessionName(ledger, run.run), formatMoment(run.at))] : []),
      ...(change.standing === "reported" && change.current ? [words.reported] : []),
    ],
  };
}

function authorOf(
  ledger: Ledger,
  { id, at, by }: { readonly id: string; readonly at: string; readonly by: string },
  riderId: string,
): Pick<ChangeLine, "id" | "at" | "when" | "who" | "rider"> {
  return {
    id,
    at,
    when: formatMoment(at),
    who: memberName(ledger, by),
    rider: riderName(ledger, riderId),
  };
}
