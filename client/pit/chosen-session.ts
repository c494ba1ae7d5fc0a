/** The weekend and the session that the pit looks at, kept in the address so that a reload keeps them. */
import { useSearchParams } from "@solidjs/router";
import { type Accessor, createMemo } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { wallClockNow } from "#client/widgets/create-wall-clock.ts";
import { sessionQuery } from "#client/widgets/session-query.ts";
import { dayOf } from "#client/widgets/today.ts";
import { type Programme, type ScheduledSession, wantedProgramme, weekends } from "#core/weekend/programme.ts";
import { sessionStandings } from "#core/weekend/session-clock.ts";

export interface ChosenSession {
  readonly weekends: Accessor<ReturnType<typeof weekends>>;
  readonly programme: Accessor<Programme | undefined>;
  readonly session: Accessor<ScheduledSession | undefined>;
  /** Chooses a weekend, and of it the first session that is not over. */
  chooseWeekend(weekendId: string): void;
  chooseSession(sessionId: string): void;
  /** The two as the end of an address: `?weekend=…&session=…`. */
  readonly query: Accessor<string>;
}

/**
 * The choice in the address; without one the current weekend, and of it the first session that is not over.
 * @param now wall-clock milliseconds, see `core/weekend/session-clock.ts`
 */
export function createChosenSession(device: Device, now: Accessor<number> = wallClockNow): ChosenSession {
  const [params, setParams] = useSearchParams<{ weekend: string; session: string }>();
  const day = createMemo(() => dayOf(now()));
  const plan = createMemo(() => wantedProgramme(device.ledger(), params.weekend, day()));
  const session = createMemo(() => {
    const sessions = plan()?.sessions ?? [];
    return sessions.find(({ id }) => id === params.session) ?? firstNotOver(sessions, now());
  });
  return {
    weekends: createMemo(() => weekends(device.ledger())),
    programme: plan,
    session,
    chooseWeekend: (weekend) => setParams({ weekend, session: undefined }, { replace: true }),
    chooseSession: (id) => setParams({ weekend: plan()?.weekendId, session: id }, { replace: true }),
    query: () => sessionQuery(plan()?.weekendId, session()?.id),
  };
}

/** The session that runs or comes next; the first once all are over, or as long as there is nothing to choose from. */
function firstNotOver(sessions: readonly ScheduledSession[], now: number): ScheduledSession | undefined {
  const open = sessionStandings(sessions, now).find(({ phase }) => phase !== "over");
  return sessions.find(({ id }) => id === open?.id) ?? sessions[0];
}
