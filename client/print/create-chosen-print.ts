/** What is printed, and on which paper: kept in the address, so that a reload keeps it and a program can ask for it. */
import { useSearchParams } from "@solidjs/router";
import { type Accessor, createMemo } from "solid-js";
import type { Device } from "#client/device/create-device.ts";
import { today } from "#client/widgets/today.ts";
import { currentWeekend, type Programme, programme, type ScheduledSession, weekends } from "#core/weekend/programme.ts";
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
  const plan = createMemo(() => {
    const wanted = params.weekend === undefined ? undefined : programme(device.ledger(), params.weekend);
    const current = currentWeekend(device.ledger(), today());
    return wanted ?? (current && programme(device.ledger(), current.id));
  });
  const session = createMemo(() => {
    const sessions = plan()?.sessions ?? [];
    return sessions.find(({ id }) => id === params.session) ?? sessions[0];
  });
  return {
    weekends: createMemo(() => weekends(device.ledger())),
    programme: plan,
    session,
    paper: () => paperNamed(params.paper) ?? suits,
    query: () => {
      const chosen = new URLSearchParams();
      const weekendId = plan()?.weekendId;
      const sessionId = session()?.id;
      if (weekendId !== undefined) chosen.set("weekend", weekendId);
      if (sessionId !== undefined) chosen.set("session", sessionId);
      return `?${chosen.toString()}`;
    },
    chooseWeekend: (weekend) => setParams({ weekend, session: undefined }, { replace: true }),
    chooseSession: (id) => setParams({ weekend: plan()?.weekendId, session: id }, { replace: true }),
    choosePaper: (paper) => setParams({ paper }, { replace: true }),
  };
}
