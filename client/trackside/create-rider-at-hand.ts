/** The rider who holds the device, with the weekend and session that the screen is about. */
import { useSearchParams } from "@solidjs/router";
import { type Accessor, createMemo } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { today } from "#client/widgets/today.ts";
import { type RiderBike, riderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { currentWeekend, type Programme, programme, type ScheduledSession, weekends } from "#core/weekend/programme.ts";
import { defaultSession } from "./default-session.ts";

export interface RiderAtHand {
  readonly mounted: Accessor<RiderBike | undefined>;
  readonly plan: Accessor<Programme | undefined>;
  readonly session: Accessor<ScheduledSession | undefined>;
  /** Where a pressure is read now; absent until course and conditions are entered. */
  readonly surroundings: Accessor<Surroundings | undefined>;
  readonly weekendChoices: Accessor<ReturnType<typeof weekends>>;
  readonly chooseWeekend: (weekendId: string) => void;
  readonly chooseSession: (sessionId: string) => void;
  /** Carries the choice of session to another screen. */
  readonly query: Accessor<string>;
}

/** What is chosen stands in the address, so that a reload keeps it. */
export function createRiderAtHand(): RiderAtHand {
  const device = useDevice();
  const [params, setParams] = useSearchParams<{ weekend: string; session: string }>();
  const mounted = createMemo(() => {
    const riderId = device.member()?.rider;
    return riderId === undefined ? undefined : riderBike(device.ledger(), riderId);
  });
  const plan = createMemo(() => {
    const ledger = device.ledger();
    const weekendId = params.weekend ?? currentWeekend(ledger, today())?.id;
    return weekendId === undefined ? undefined : programme(ledger, weekendId);
  });
  const session = createMemo(() => {
    const current = plan();
    const riderId = mounted()?.riderId;
    if (!current) return undefined;
    const chosen = current.sessions.find(({ id }) => id === params.session);
    return chosen ?? defaultSession(device.ledger(), current, riderId);
  });
  const surroundings = createMemo((): Surroundings | undefined => {
    const altitude = plan()?.course?.altitude;
    const air = session()?.conditions?.air;
    return altitude && air ? { temperature: air, altitude } : undefined;
  });
  return {
    mounted,
    plan,
    session,
    surroundings,
    weekendChoices: createMemo(() => weekends(device.ledger())),
    chooseWeekend: (id) => setParams({ weekend: id, session: undefined }, { replace: true }),
    chooseSession: (id) => setParams({ session: id }, { replace: true }),
    query: () => {
      const chosen = new URLSearchParams();
      if (params.weekend !== undefined) chosen.set("weekend", params.weekend);
      if (params.session !== undefined) chosen.set("session", params.session);
      const text = chosen.toString();
      return text === "" ? "" : `?${text}`;
    },
  };
}
