/** Course and conditions in one line. */
import { common } from "#client/text/common.ts";
import { pit } from "#client/text/pit.ts";
import { formatNumber, formatQuantity } from "#client/widgets/format.ts";
import type { Programme, ScheduledSession } from "#core/weekend/programme.ts";

/** The line, or undefined while one of the two is not entered or in dispute. */
export function conditionsLine(plan: Programme | undefined, session: ScheduledSession | undefined): string | undefined {
  const conditions = session?.conditions;
  if (!plan?.course || !conditions) return undefined;
  const { mix, altitude } = plan.course;
  const course = pit.board.course(
    formatNumber(mix.steep),
    formatNumber(mix.jumpy),
    formatNumber(mix.wet),
    formatQuantity(altitude),
  );
  const bench = conditions.bench && formatQuantity(conditions.bench);
  return `${course}. ${pit.board.conditions(formatQuantity(conditions.air), bench, common.grounds[conditions.ground])}.`;
}
