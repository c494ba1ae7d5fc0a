/** What is printed, and on which paper: kept in the address, so that a reload keeps it and a program can ask for it. */
import { useSearchParams } from "@solidjs/router";
import { type Accessor, createMemo } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { sessionQuery } from "#client/widgets/session-query.ts";
import { today } from "#client/widgets/today.ts";
import { type Programme, type ScheduledSession, wantedProgramme, weekends } from "#core/weekend/programme.ts";
import { type Paper, paperNamed } from "./paper.ts";

export interface ChosenPrint {
  readonly weekends: Accessor<ReturnType<typeof weekends>>;
  readonly programme: Accessor<Programme | undefined>;
  readonly session: Accessor<ScheduledSession | undefined>;
  readonly paper: Accessor<Paper>;
  /** Weekend and session as the end of an address: `?weekend=…&session=…`. */
  readonly query: Accessor<string>;
  chooseWeekend(weekendId: string): void;
  chooseSession(sessionId: string): void;
  choosePaper(paper: Paper): void;
}

/** The choice in the address; without one the current weekend, its first session, and the paper that suits the page. */
export function createChosenPrint(device: Device, suits: Paper): ChosenPrint {
  const [params, setParams] = useSearchParams<{ weekend: string; session: string; paper: string }>();
  const plan = createMemo(() => wantedProgramme(device.ledger(), params.weekend, today()));
  const session = createMemo(() => {
    const sessions = plan()?.sessions ?? [];
    return sessions.find(({ id }) => id === params.session) ?? sessions[0];
  });
  return {
    weekends: createMemo(() => weekends(device.ledger())),
    programme: plan,
    session,
    paper: () => paperNamed(params.paper) ?? suits,
    query: () => sessionQuery(plan()?.weekendId, session()?.id),
    chooseWeekend: (weekend) => setParams({ weekend, session: undefined }, { replace: true }),
    chooseSession: (id) => setParams({ weekend: plan()?.weekendId, session: id }, { replace: true }),
    choosePaper: (paper) => setParams({ paper }, { replace: true }),
  };
}
