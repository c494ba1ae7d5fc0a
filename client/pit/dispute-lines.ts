/** Disputes in words, each with the place where it is settled. */
import { pit } from "#client/text/pit.ts";
import { riderDetails } from "#client/text/rider-details.ts";
import { sentBack } from "#client/text/sent-back.ts";
import { spareBike } from "#client/text/spare-bike.ts";
import { trade } from "#client/text/trade.ts";
import { weekend } from "#client/text/weekend.ts";
import { memberName } from "#client/widgets/names.ts";
import type { Ledger } from "#core/ledger/ledger.ts";
import { isPlaceInDispute, type OpenDispute, openDisputes } from "#core/planning/open-disputes.ts";
import { serviceKind, servicePlanKind } from "#core/planning/service-kinds.ts";
import { riderKind, sentBackKind } from "#core/team/record-kinds.ts";
import { knownValue } from "#core/team/roster.ts";
import type { Dispute } from "#core/weekend/disputes.ts";
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
  return openDisputes(ledger).map((dispute) => disputeLine(ledger, dispute));
}

/** One dispute in words. */
export function disputeLine(ledger: Ledger, dispute: OpenDispute): DisputeLine {
  return { id: `${dispute.kind}:${dispute.key}`, ...lineOf(ledger, dispute) };
}

function lineOf(ledger: Ledger, dispute: OpenDispute): Omit<DisputeLine, "id"> {
  if (isPlaceInDispute(dispute)) {
    const { mounted, place } = dispute;
    return {
      rider: mounted.rider.name,
      sentence: spareBike.disputes.line(place, mounted.bike.name),
      path: `/pit/rider/${mounted.riderId}/bikes`,
    };
  }
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
