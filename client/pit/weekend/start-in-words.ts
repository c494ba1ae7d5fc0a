/** When a session starts, in words. */
import { formatMoment } from "#client/widgets/format.ts";
import { isDay, isTimeOfDay } from "./calendar-day.ts";
import type { SessionDraft } from "./weekend-draft.ts";

/** "Fri 29 May, 10:30"; undefined while day or time are not known. */
export function startInWords({ day, time }: Pick<SessionDraft, "day" | "time">): string | undefined {
  return isDay(day) && isTimeOfDay(time) ? formatMoment(`${day}T${time}`) : undefined;
}
