/** One rider's baselines under review: the versions, and this weekend's setup as a new one. */
import { useParams, useSearchParams } from "@solidjs/router";
import { type Accessor, createMemo } from "solid-js";
import { useDevice } from "#client/device/device-context.tsx";
import { common } from "#client/text/common.ts";
import { review } from "#client/text/review.ts";
import { formatQuantity } from "#client/widgets/format.ts";
import { today } from "#client/widgets/today.ts";
import { dominantType, type ProposalResult, proposeBaseline } from "#core/planning/baseline-review.ts";
import { type CourseType, courseTypes } from "#core/team/course-type.ts";
import { type RiderBike, riderBike } from "#core/team/roster.ts";
import type { Surroundings } from "#core/team/surroundings.ts";
import { currentWeekend, type Programme, programme, type ScheduledSession, weekends } from "#core/weekend/programme.ts";
import { type VersionView, versionsView } from "./versions-view.ts";

export interface RiderReview {
  readonly mounted: Accessor<RiderBike | undefined>;
  readonly plan: Accessor<Programme | undefined>;
  readonly weekendChoices: Accessor<ReturnType<typeof weekends>>;
  readonly type: Accessor<CourseType>;
  /** The sessions at whose temperature the new baseline can hold. */
  readonly sessions: Accessor<readonly ScheduledSession[]>;
  readonly session: Accessor<ScheduledSession | undefined>;
  /** Absent until course and conditions of the session are entered. */
  readonly ride: Accessor<Surroundings | undefined>;
  /** Temperature, altitude and ground at which the new baseline holds, in a sentence. */
  readonly holdsAt: Accessor<string | undefined>;
  readonly proposal: Accessor<ProposalResult | undefined>;
  readonly versions: Accessor<readonly VersionView[]>;
  /** Two people have approved different versions while apart. */
  readonly isDisputed: Accessor<boolean>;
  /** Which type most of the weekend's course is of, in a sentence. */
  readonly dominant: Accessor<string | undefined>;
  readonly choose: (choice: { weekend?: string; type?: CourseType; session?: string }) => void;
}

/** What is chosen stands in the address, so that a reload keeps it. */
export function createRiderReview(): RiderReview {
  const device = useDevice();
  const path = useParams<{ riderId: string }>();
  const [params, setParams] = useSearchParams<{ weekend: string; type: string; session: string }>();
  const mounted = createMemo(() => riderBike(device.ledger(), path.riderId));
  const weekendChoices = createMemo(() => weekends(device.ledger()));
  const plan = createMemo(() => {
    const id = params.weekend ?? currentWeekend(device.ledger(), today())?.id;
    return id === undefined ? undefined : programme(device.ledger(), id);
  });
  const type = createMemo((): CourseType => {
    const chosen = courseTypes.find((candidate) => candidate === params.type);
    const course = plan()?.course;
    return chosen ?? (course ? dominantType(course.mix) : "steep");
  });
  const sessions = createMemo(() => plan()?.sessions.filter(({ conditions }) => conditions !== undefined) ?? []);
  const session = createMemo(() => sessions().find(({ id }) => id === params.session) ?? sessions().at(-1));
  const ride = createMemo((): Surroundings | undefined => {
    const altitude = plan()?.course?.altitude;
    const air = session()?.conditions?.air;
    return altitude && air ? { temperature: air, altitude } : undefined;
  });
  const proposal = createMemo(() => {
    const rider = mounted();
    const weekend = plan();
    const surroundings = ride();
    if (!rider || !weekend || !surroundings) return undefined;
    return proposeBaseline(
      device.ledger(),
      rider,
      type(),
      weekend.weekendId,
      surroundings,
      session()?.conditions?.ground,
    );
  });
  const versions = createMemo(() => {
    const rider = mounted();
    return rider ? versionsView(device.ledger(), rider, type()) : [];
  });
  return {
    mounted,
    plan,
    weekendChoices,
    type,
    sessions,
    session,
    ride,
    holdsAt: () => {
      const surroundings = ride();
      const ground = session()?.conditions?.ground;
      if (!surroundings || !ground) return undefined;
      const { temperature, altitude } = surroundings;
      return review.weekend.holdsAt(formatQuantity(temperature), formatQuantity(altitude), common.grounds[ground]);
    },
    proposal,
    versions,
    isDisputed: () => versions().some(({ standing }) => standing === "in dispute"),
    dominant: () => {
      const weekend = plan();
      if (!weekend?.course) return undefined;
      return review.rider.dominant(common.courseTypes[dominantType(weekend.course.mix)], weekend.weekend.name);
    },
    choose: (choice) => setParams(choice, { replace: true }),
  };
}
