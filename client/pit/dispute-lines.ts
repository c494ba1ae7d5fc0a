/** Disputes in words, each with the place where it is settled. */
import { pit } from "#client/text/pit.ts";
import { riderDetails } from "#client/text/rider-details.ts";
import { sentBack } from "#client/text/sent-back.ts";
import { spareBike } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { weekend } from "#client/text/weekend.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { standingSendBacks } from "#core/planning/sent-back.ts";
import { serviceKind, servicePlanKind } from "#core/planning/service-kinds.ts";
import { mountingKind, riderKind, sentBackKind } from "#core/team/record-kinds.ts";
import { allBikes, knownValue, riderBike } from "#core/team/roster.ts";
import { type Dispute, disputes } from "#core/weekend/disputes.ts";
import { parseSettingKey } from "#core/weekend/on-the-bike.ts";
import {
  conditionsKind,
  courseKind,
  decisionKind,
  runKind,
  sessionKind,
  settingKind,
  weekendKind,
} from "#core/weekend/record-kinds.ts";
import { placeDisputes } from "./bikes/bike-lines.ts";
import { memberName } from "./names.ts";

export interface DisputeLine {
  readonly id: string;
  /** The rider it is about, where it is about one. */
  readonly rider: string | undefined;
  readonly sentence: string;
  /** Where it is settled; absent where the pit cannot. */
  readonly path: string | undefined;
}

/** All open disputes, by kind and key; of notes to a setup only while they are about the setup on the bike. */
export function disputeLines(ledger: Ledger): readonly DisputeLine[] {
  const ofPlaces = placeDisputes(ledger, allBikes(ledger)).map(
    ({ id, mounted, place }): DisputeLine => ({
      id,
      rider: mounted.rider.name,
      sentence: spareBike.disputes.line(place, mounted.bike.name),
      path: `/pit/rider/${mounted.riderId}/bikes`,
    }),
  );
  const others = disputes(ledger)
    // Where a part is, is shown at the places where it is said to be.
    .filter(({ kind }) => kind !== mountingKind.kind || ofPlaces.length === 0)
    .filter((dispute) => dispute.kind !== sentBackKind.kind || isStandingSendBack(ledger, dispute))
    .map((dispute) => ({ id: `${dispute.kind}:${dispute.key}`, ...lineOf(ledger, dispute) }));
  return [...others, ...ofPlaces];
}

function isStandingSendBack(ledger: Ledger, { key, claims }: Dispute): boolean {
  const mounted = riderBike(ledger, key.slice(0, key.indexOf("/")));
  const standing = mounted ? standingSendBacks(ledger, mounted).map(({ record }) => record.id) : [];
  return claims.some(({ id }) => standing.includes(id));
}

function lineOf(ledger: Ledger, dispute: Dispute): Omit<DisputeLine, "id"> {
  const { kind, key } = dispute;
  const owner = key.slice(0, Math.max(0, key.indexOf("/")));
  const rider = knownValue(ledger, riderKind, owner)?.name;
  const riderPath = `/pit/rider/${owner}`;
  switch (kind) {
    case settingKind.kind: {
      const path = parseSettingKey(key)?.path;
      return { rider, sentence: settingSentence(ledger, dispute, path ? trade.adjuster(path) : key), path: riderPath };
    }
    case courseKind.kind:
      return { rider: undefined, sentence: pit.disputes.ofCourse, path: "/pit/course" };
    case conditionsKind.kind: {
      const session = knownValue(ledger, sessionKind, key)?.name ?? key;
      return { rider: undefined, sentence: pit.disputes.ofConditions(session), path: "/pit/course" };
    }
    case runKind.kind:
      return { rider, sentence: pit.disputes.ofRun, path: riderPath };
    case decisionKind.kind:
      return { rider, sentence: pit.disputes.ofDecision, path: riderPath };
    case serviceKind.kind:
      return { rider, sentence: pit.disputes.ofService, path: riderPath };
    case sentBackKind.kind:
      return { rider, sentence: sentBack.ofDispute(key.slice(owner.length + 1)), path: riderPath };
    case servicePlanKind.kind:
      return { rider: undefined, sentence: pit.disputes.ofServicePlan, path: undefined };
    case weekendKind.kind:
      return { rider: undefined, sentence: weekend.ofWeekend, path: `/pit/weekend/${key}/edit` };
    case sessionKind.kind: {
      const session = knownValue(ledger, sessionKind, key)?.name ?? key;
      return { rider: undefined, sentence: weekend.ofSession(session), path: `/pit/weekend/${owner}/edit` };
    }
    case riderKind.kind:
      return {
        rider: knownValue(ledger, riderKind, key)?.name,
        sentence: riderDetails.ofRider,
        path: `/pit/rider/${key}`,
      };
    default:
      return { rider, sentence: pit.disputes.ofOther(kind, key), path: undefined };
  }
}

function settingSentence(ledger: Ledger, { claims }: Dispute, adjuster: string): string {
  const who = [...new Set(claims.map(({ by }) => memberName(ledger, by)))].join(pit.disputes.and);
  return pit.disputes.ofSetting(adjuster, who);
}
