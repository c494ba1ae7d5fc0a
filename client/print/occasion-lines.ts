/** What stands at the head and the foot of every printed page: the occasion, and how old it may be. */
import { common } from "#client/text/common.ts";
import { print } from "#client/text/print.ts";
import { formatMoment, formatNumber, formatQuantity } from "#client/widgets/format.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { newestEntry } from "#core/planning/newest-entry.ts";
import type { SetupSheet } from "#core/planning/setup-sheet.ts";
import type { Conditions } from "#core/weekend/conditions.ts";
import type { Course } from "#core/weekend/course.ts";
import type { Programme, ScheduledSession } from "#core/weekend/programme.ts";

/** The head of a rider's sheet. */
export function headLines({ mounted, programme, session }: SetupSheet): {
  readonly title: string;
  readonly aside: string;
  readonly lines: readonly string[];
} {
  const { rider, bike } = mounted;
  const facts = [
    ...(rider.plate === undefined ? [] : [print.plate(rider.plate)]),
    bike.name,
    print.mass(formatQuantity(rider.mass)),
  ];
  return { title: rider.name, aside: facts.join(", "), lines: occasionLines(programme, session) };
}

/** Weekend, session, course and conditions, as far as they are entered, a line each. */
export function occasionLines(plan: Programme | undefined, session: ScheduledSession | undefined): readonly string[] {
  if (!plan) return [];
  const place = plan.venue && plan.venue.name !== plan.weekend.name ? [plan.venue.name] : [];
  const start = session ? [print.sessionAt(session.session.name, formatMoment(session.session.startsAt))] : [];
  return [
    [plan.weekend.name, ...place, ...start].join(". "),
    [
      ...(plan.course ? [courseLine(plan.course)] : []),
      ...(session?.conditions ? [conditionsText(session.conditions)] : []),
    ].join(". "),
  ];
}

/** "Steep 0.6, jumpy 0.3, wet 0.1, at 1950 m". */
export function courseLine({ mix, altitude }: Course): string {
  return print.course(
    formatNumber(mix.steep),
    formatNumber(mix.jumpy),
    formatNumber(mix.wet),
    formatQuantity(altitude),
  );
}

/** "Air 22 °C, at the bench 12 °C, ground dry dust". */
export function conditionsText({ air, bench, ground }: Conditions): string {
  return print.conditions(formatQuantity(air), bench && formatQuantity(bench), common.grounds[ground]);
}

/**
 * Who printed it and when, and of when it is.
 * @param moment when it is printed, ms since the epoch
 */
export function ageLines(ledger: Ledger, moment: number, who: string): readonly [string, string] {
  const newest = newestEntry(ledger);
  return [
    print.printed(formatMoment(moment), who),
    newest === undefined ? print.noState : print.state(formatMoment(newest), ledger.size),
  ];
}
