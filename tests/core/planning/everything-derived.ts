/** Everything that the screens and the replay ask of the records, in one value. */
import { courseFacts, reversedProfile } from "#core/course/course-facts.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { backToMoment } from "#core/planning/back-to-moment.ts";
import { approvals } from "#core/planning/baseline-approvals.ts";
import { baselineEvidence, runsByRider } from "#core/planning/baseline-evidence.ts";
import { baselineOutliers } from "#core/planning/baseline-outliers.ts";
import { baselineMatrix, compareBaselines, dominantType, proposeBaseline } from "#core/planning/baseline-review.ts";
import { beforeWeekend, differencesBetween, momentsOf, settingsAt } from "#core/planning/bike-at-moment.ts";
import { answeredRun, describeCause } from "#core/planning/changelog-text.ts";
import { copyEntries, copySetup } from "#core/planning/copy-setup.ts";
import { confirmationEntry } from "#core/planning/entries.ts";
import { jobQueue } from "#core/planning/job-queue.ts";
import { movePart } from "#core/planning/move-part.ts";
import { newestEntry } from "#core/planning/newest-entry.ts";
import { partHistory } from "#core/planning/part-history.ts";
import { riddenSag } from "#core/planning/ridden-sag.ts";
import { adviceOnRun } from "#core/planning/run-advice.ts";
import { answerToRun } from "#core/planning/run-answer.ts";
import { sendBackEntry, standingSendBacks } from "#core/planning/sent-back.ts";
import { serviceStatus } from "#core/planning/service-status.ts";
import { describeSheetProblem, setupSheet } from "#core/planning/setup-sheet.ts";
import { weekendReport } from "#core/planning/weekend-report.ts";
import { courseTypes } from "#core/team/course-type.ts";
import { partsKeptAside, placesOf } from "#core/team/parts-on-bike.ts";
import { baselineKind, partKind, riderKind } from "#core/team/record-kinds.ts";
import { allBikes, members, riderBikes } from "#core/team/roster.ts";
import { changelog } from "#core/weekend/changelog.ts";
import { courseSections } from "#core/weekend/course-sections.ts";
import { disputes } from "#core/weekend/disputes.ts";
import { settingsOnBike, valuesOnBike } from "#core/weekend/on-the-bike.ts";
import { currentWeekend, programme, seasonOf, weekends } from "#core/weekend/programme.ts";
import { loggedRuns } from "#core/weekend/runs.ts";

export function everythingDerived(ledger: Ledger) {
  const plans = weekends(ledger).map(({ id, weekend }) => ({ plan: programme(ledger, id), season: seasonOf(weekend) }));
  const log = changelog(ledger);
  const riders = ledger.keys(riderKind);
  return {
    plans,
    courses: plans.map(({ plan }) => {
      const profile = plan?.course?.profile;
      return {
        sections: plan && courseSections(ledger, plan.weekendId),
        facts: profile && [courseFacts(profile), courseFacts(reversedProfile(profile))],
      };
    }),
    today: currentWeekend(ledger, "2026-05-30"),
    members: members(ledger),
    disputes: disputes(ledger),
    unreadable: ledger.unreadable().length,
    log: log.map((change) => [change, describeCause(change), answeredRun(change)]),
    matrix: baselineMatrix(ledger).map(({ mounted, cells }) =>
      courseTypes.map((type) =>
        cells[type].versions.map(({ value }) => compareBaselines(mounted, cells[type].baseline, value)),
      ),
    ),
    evidence: ledger
      .keys(baselineKind)
      .flatMap((key) =>
        ledger
          .history(baselineKind, key)
          .map(({ value }) => value && baselineEvidence(ledger, value, runsByRider(ledger).get("alder"))),
      ),
    outliers: baselineOutliers(ledger, baselineMatrix(ledger)),
    newest: newestEntry(ledger),
    reports: plans.map(({ plan }) => plan && weekendReport(ledger, plan.weekendId)),
    approvals: plans.map(({ plan }) => plan && approvals(ledger, { weekend: plan.weekendId })),
    sheets: riders.flatMap((rider) =>
      plans.flatMap(({ plan }) => plan?.sessions.map(({ id }) => setupSheet(ledger, plan.weekendId, id, rider)) ?? []),
    ),
    jobs: plans.flatMap(({ plan }) =>
      (plan?.sessions ?? []).map(({ id }) =>
        jobQueue(ledger, { weekendId: plan?.weekendId ?? "", sessionId: id, now: Date.parse("2026-05-30T12:00Z") }),
      ),
    ),
    bikes: riderBikes(ledger).map((mounted) => {
      const settings = settingsOnBike(ledger, mounted);
      const ride = { temperature: { value: 20, unit: "°C" as const }, altitude: { value: 0, unit: "m" as const } };
      const moments = momentsOf(ledger, mounted);
      return {
        moments: [beforeWeekend(moments, "kestrel"), ...moments.slice(0, 3).map(({ moment }) => moment)].map(
          (moment) => {
            const then = settingsAt(ledger, mounted, moment);
            return {
              differences: differencesBetween(mounted, then, settings),
              back: backToMoment(mounted, then, settings, ride),
            };
          },
        ),
        onTheBike: valuesOnBike(settings),
        sentBack: standingSendBacks(ledger, mounted),
        service: serviceStatus(ledger, mounted, "kestrel"),
        confirmations: [...settings].map(([path, current]) => confirmationEntry(mounted, path, current)),
        weekends: plans.map(({ plan }) => {
          if (!plan) return undefined;
          return {
            type: plan.course && dominantType(plan.course.mix),
            sag: riddenSag(ledger, mounted, plan.weekendId),
            sendBack: sendBackEntry(ledger, mounted, "steep", plan.weekendId, "Not yet."),
            proposal: proposeBaseline(ledger, mounted, "steep", plan.weekendId, ride),
          };
        }),
      };
    }),
    spares: allBikes(ledger).flatMap((from) =>
      allBikes(ledger).map((to) => {
        const [here, there] = [from, to].map((mounted) => ({ mounted, settings: settingsOnBike(ledger, mounted) }));
        if (!here || !there) return undefined;
        const bench = { temperature: { value: 20, unit: "°C" as const }, altitude: { value: 0, unit: "m" as const } };
        const copy = copySetup(here, there, bench);
        return [copy, copyEntries(copy, here, to, { weekendId: "kestrel", bench })];
      }),
    ),
    aside: partsKeptAside(ledger),
    places: allBikes(ledger).map(({ bikeId, bike }) => placesOf(ledger, bikeId, bike)),
    parts: ledger
      .keys(partKind)
      .map((partId) => [
        partHistory(ledger, partId, "alder-1"),
        movePart(ledger, { partId, from: "alder-1", to: "alder-2", swap: true, airKept: true }),
        movePart(ledger, { partId, from: "alder-1", to: undefined, swap: false, airKept: false }),
        movePart(ledger, { partId, from: undefined, to: "alder-1", swap: false, airKept: false }),
      ]),
    runs: plans.flatMap(({ plan }) =>
      (plan ? loggedRuns(ledger, plan.weekendId) : []).map((logged) => {
        const advice = adviceOnRun(ledger, logged);
        return {
          advice,
          answer: answerToRun(ledger, logged),
          problem: !advice.ok && describeSheetProblem(advice.problem),
        };
      }),
    ),
  };
}
